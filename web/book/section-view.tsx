// One section of a book: a mark, where it is found, and its rules with their windows and sources.
import type {ReactNode} from "react";
import type {Cite, Source} from "../../engine/rule/schema.ts";
import {howKnown, type Section} from "./section.ts";

export function SectionView({section, from}: {section: Section; from?: ReactNode}) {
  const {id, name, says, caution, place, look, cite, source, rules} = section;
  return (
    <section className="book-section" id={id} tabIndex={-1} aria-label={name}>
      <h3>{name}{from && <span className="book-from">{from}</span>}</h3>
      {says && <p>{says}</p>}
      {place && <p className="quiet">{`Found: ${place}.`}{look && ` ${look}`}</p>}
      {caution && <p className="caution">{caution}</p>}
      {cite && <CiteLine cite={cite} source={source} />}
      {rules.length > 0 && (
        <ul className="book-rules">
          {rules.map((rule) => (
            <li key={rule.key}>
              <span className="rule-name">{rule.name}</span>
              {rule.when && <span className="rule-when">{rule.when}</span>}
              {rule.says && <span className="rule-says">{rule.says}</span>}
              {rule.cite.ref === cite?.ref && rule.cite.at === cite.at && rule.cite.how === cite.how ? null : <CiteLine cite={rule.cite} source={rule.source} />}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** On whose authority: the source, where in it, and how that is known. */
function CiteLine({cite, source}: {cite: Cite; source: Source | null}) {
  const parts = [source?.title ?? cite.ref, source?.publisher, source?.date, cite.at].filter(Boolean);
  return (
    <span className="cite">
      <cite>{parts.join(", ")}</cite>
      <span className={cite.how === "memory" ? "how memory" : "how"}>{howKnown[cite.how]}</span>
    </span>
  );
}
