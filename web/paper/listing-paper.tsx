// Listing text of a garment, beside the template that sets its order and voice: what is changed there is tried at once.
import {useDeferredValue, useEffect, useState} from "react";
import {listingTemplateSchema, type ListingTemplate} from "../../commands/paper/listing-template.ts";
import {saveFile} from "../book/save-file.ts";
import {Button} from "../ui/button.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import {useSetting} from "../worth/terms/use-setting.ts";
import type {Wish} from "./address.ts";
import {MakePaper} from "./make-paper.tsx";
import {TemplateEditor, templateFaults} from "./template-editor.tsx";
import {Turn} from "./turn.tsx";
import {useText} from "./use-text.ts";

const endings = {plain: ["txt", "text/plain"], markdown: ["md", "text/markdown"], json: ["json", "application/ld+json"]} as const;

export function ListingPaper({wish}: {readonly wish: Wish}) {
  const {of, form} = wish;
  const [at, setAt] = useState(0);
  const setting = useSetting<ListingTemplate>("listing-template");
  const kept = setting.value;
  const [template, setTemplate] = useState<ListingTemplate>(() => listingTemplateSchema.parse({}));
  const [said, say] = useState("");
  useEffect(() => {
    if (kept) setTemplate(kept);
  }, [kept]);
  const id = of[Math.min(at, of.length - 1)]!;
  const faults = templateFaults(template);
  const tried = useDeferredValue(template);
  const [sound, setSound] = useState(template);
  useEffect(() => {
    if (templateFaults(tried).length === 0) setSound(tried);
  }, [tried]);
  const {text, stale, problems: unread} = useText("/api/paper/listing", JSON.stringify({id, form, template: sound}));
  const save = async () => {
    if (await setting.save(template)) say("Kept for all listings.");
  };
  const copy = () => void navigator.clipboard.writeText(text ?? "").then(() => say("Copied."), () => say("This browser does not let pages copy; mark the text and copy it by hand."));
  const [ending, mime] = endings[form];
  const changed = kept !== null && JSON.stringify(kept) !== JSON.stringify(template);
  return (
    <div className="listing">
      <div>
        <Turn at={at} of={of.length} onTurn={setAt} />
        <ProblemList problems={[...unread, ...setting.problems]} />
        <pre className={stale || text === null ? "listing-text stale" : "listing-text ready"} tabIndex={0} aria-label="Listing text">{text ?? "…"}</pre>
        <p className="listing-ways">
          <Button look="main" onClick={copy} disabled={text === null}>Copy</Button>
          <Button onClick={() => text !== null && saveFile(`listing.${ending}`, text, mime)} disabled={text === null}>Save as a file</Button>
          <span role="status" className="quiet">{said}</span>
        </p>
        {of.length > 1 && <MakePaper wish={wish} />}
      </div>
      {kept && <TemplateEditor template={template} faults={faults} onChange={(next) => (setTemplate(next), say(""))}>
        <Button look={changed ? "main" : "plain"} disabled={!changed || faults.length > 0} onClick={() => void save()}>{changed ? "Keep this template" : "This template is kept"}</Button>
        {changed && <Button look="quiet" onClick={() => setTemplate(kept)}>Back to the kept one</Button>}
      </TemplateEditor>}
    </div>
  );
}
