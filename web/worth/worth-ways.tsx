// The ways between the screens of money.
import {Link, useLocation} from "wouter";

const ways = [
  ["/sales", "Sales"],
  ["/lot", "A lot"],
  ["/shop", "The shop"],
  ["/terms", "Terms"],
] as const;

export function WorthWays() {
  const [at] = useLocation();
  return (
    <nav className="worth-ways" aria-label="Worth">
      {ways.map(([href, name]) => <Link key={href} href={href} aria-current={at === href || at.startsWith(`${href}/`) ? "page" : undefined}>{name}</Link>)}
    </nav>
  );
}
