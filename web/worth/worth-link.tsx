// The way from a garment on the rack to its worth: what is asked for it, or the question.
import {Link} from "wouter";
import type {RackRow} from "../../store/model.ts";
import {sayMoney} from "../rack/say.ts";

export function WorthLink({row: {id, number, asked}}: {readonly row: Pick<RackRow, "id" | "number" | "asked">}) {
  return <Link href={`/worth/${id}`}>{asked ? sayMoney(asked) : "worth?"}<span className="unseen"> what {number} is worth</span></Link>;
}
