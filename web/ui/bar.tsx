// The bar of screens: on top of the page, on a phone at its foot where the thumb is.
import {Link, useLocation} from "wouter";

/** Screens put what they have to say of themselves here. */
export const barNote = "bar-note";

const screens = [
  {href: "/examine", name: "Examine", also: ["/", "/measure"]},
  {href: "/rack", name: "Rack", also: ["/grade-rule"]},
  {href: "/books", name: "Rule books", also: []},
  {href: "/paper", name: "Paper", also: []},
  {href: "/sales", name: "Worth", also: ["/lot", "/shop", "/terms", "/worth"]},
] as const;

export function Bar() {
  const [at] = useLocation();
  return (
    <header className="bar">
      <Link href="/examine" className="wordmark">ticking</Link>
      <nav aria-label="Screens">
        {screens.map(({href, name, also}) => {
          const here = [href, ...also].some((one) => at === one || at.startsWith(`${one}/`));
          return <Link key={href} href={href} aria-current={here ? "page" : undefined}>{name}</Link>;
        })}
      </nav>
      <div id={barNote} className="bar-note" />
    </header>
  );
}
