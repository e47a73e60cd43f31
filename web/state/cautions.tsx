// The cautions that belong to this garment where the owner sells, each with its source a press away.
import {useMemo} from "react";
import type {Owner} from "../../commands/rack/settings.ts";
import {cautionsFor, type Caution} from "../../state/caution.ts";
import type {Content} from "../../store/model.ts";
import {useSetting} from "../worth/terms/use-setting.ts";

const ways = {read: "seen in the source", part: "partly seen in the source", memory: "from memory, not looked up"} as const;

export function Cautions({content}: {readonly content: Content}) {
  const {value: owner} = useSetting<Owner>("owner");
  const cautions = useMemo(() => cautionsFor(content, owner?.country ?? ""), [content, owner]);
  const sourced = cautions.filter((one): one is Caution & {source: NonNullable<Caution["source"]>} => one.source !== null);
  return (
    <footer className="notice cautions">
      <ul aria-label="Cautions">{cautions.map(({id, says}) => <li key={id}>{says}</li>)}</ul>
      <details>
        <summary>Whose law, and how it was seen</summary>
        <ul>{sourced.map(({id, says, source}) => <li key={id}>{says.split(/[.:;,]/)[0]}: {source.title} ({ways[source.how]}).</li>)}</ul>
        <p>{owner?.country ? `Chosen for ${owner.country}.` : "The owner's country is not said, so only what holds anywhere is shown."} Local law decides.</p>
      </details>
    </footer>
  );
}
