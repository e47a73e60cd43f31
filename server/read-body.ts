// Reads the body of a request up to a limit; what is too long is not read to its end.
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";

/** The media type of a request, without its parameters. */
export const mediaOf = (request: Request) => (request.headers.get("content-type") ?? "").split(";")[0]!.trim().toLowerCase();

/**
 * A body as JSON; no body at all stands for an input without entries.
 * Demanding the media type also makes a browser ask first before another site can send it.
 */
export async function readJson(request: Request, most: number): Promise<unknown> {
  const bytes = await readBytes(request, most);
  const media = mediaOf(request);
  if (bytes.length === 0 && (media === "" || media === "application/json")) return {};
  if (media !== "application/json") throw new Refused(415, [say.wrongMedia(media, ["application/json"])]);
  try {
    return JSON.parse(new TextDecoder("utf-8", {fatal: true}).decode(bytes));
  } catch (error) {
    throw new Refused(400, [say.notJson((error as Error).message.slice(0, 120))]);
  }
}

export async function readBytes(request: Request, most: number): Promise<Uint8Array> {
  if (Number(request.headers.get("content-length") ?? 0) > most) throw new Refused(413, [say.tooLarge(most)]);
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of request.body ?? []) {
    size += piece.length;
    if (size > most) throw new Refused(413, [say.tooLarge(most)]);
    pieces.push(piece);
  }
  return Buffer.concat(pieces);
}
