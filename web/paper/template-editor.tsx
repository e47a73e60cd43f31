// The owner's template of listings: parts in their order, own words before and after, the voice and the units.
import type {ReactNode} from "react";
import {blockMeaning, braceFault, listingBlocks, placeholders, type ListingBlock, type ListingTemplate} from "../../commands/paper/listing-template.ts";
import {Button} from "../ui/button.tsx";
import {Field} from "../ui/field.tsx";

/** What keeps a template from being tried or kept. */
export const templateFaults = ({intro, outro}: ListingTemplate): readonly string[] => [intro, outro].flatMap((text) => braceFault(text) ?? []);

export interface TemplateEditorProps {
  readonly template: ListingTemplate;
  readonly faults: readonly string[];
  readonly onChange: (next: ListingTemplate) => void;
  readonly children: ReactNode;
}

export function TemplateEditor({template, faults, onChange, children}: TemplateEditorProps) {
  const {intro, outro, blocks, voice, units} = template;
  const move = (i: number, by: number) => {
    const next = [...blocks];
    const [block] = next.splice(i, 1);
    next.splice(i + by, 0, block!);
    onChange({...template, blocks: next});
  };
  const left = listingBlocks.filter((block) => !blocks.includes(block));
  const words = (label: string, text: string, set: (text: string) => void) => (
    <Field label={label} wrong={braceFault(text)}>{(tie) => <textarea {...tie} rows={3} maxLength={2000} value={text} onChange={({target}) => set(target.value)} />}</Field>
  );
  return (
    <section className="template" aria-label="Template">
      <h2>Your template</h2>
      {words("Your words first", intro, (text) => onChange({...template, intro: text}))}
      <div>
        <h3>Parts, in this order</h3>
        <ol className="parts">
          {blocks.map((block, i) => (
            <li key={block}>
              <span><b>{block}</b> <span className="quiet">{blockMeaning[block]}</span></span>
              <span className="part-ways">
                <Button aria-label={`${block} earlier`} disabled={i === 0} onClick={() => move(i, -1)}>↑</Button>
                <Button aria-label={`${block} later`} disabled={i === blocks.length - 1} onClick={() => move(i, 1)}>↓</Button>
                <Button look="quiet" aria-label={`Leave out ${block}`} onClick={() => onChange({...template, blocks: blocks.filter((one) => one !== block)})}>leave out</Button>
              </span>
            </li>
          ))}
        </ol>
        {left.length > 0 && <p className="quiet">Left out: {left.map((block: ListingBlock) => <Button key={block} look="quiet" onClick={() => onChange({...template, blocks: [...blocks, block]})}>{`add ${block}`}</Button>)}</p>}
        <p className="quiet">Odd marks, the state, and that the date is an estimate are told whatever is left out.</p>
      </div>
      {words("Your words last", outro, (text) => onChange({...template, outro: text}))}
      <p className="quiet">In your words these stand for the garment’s own: {placeholders.map((name) => `{${name}}`).join(", ")}. A line whose braces all stand for nothing is left out.</p>
      <div className="template-choices">
        <Field label="Voice">{(tie) => <select {...tie} value={voice} onChange={({target}) => onChange({...template, voice: target.value as ListingTemplate["voice"]})}><option value="spoken">whole sentences</option><option value="short">a line a fact</option></select>}</Field>
        <Field label="Measurements in">{(tie) => <select {...tie} value={units} onChange={({target}) => onChange({...template, units: target.value as ListingTemplate["units"]})}><option value="both">both units</option><option value="inches">inches</option><option value="centimetres">centimetres</option></select>}</Field>
      </div>
      <p className="listing-ways">{children}{faults.length > 0 && <span className="quiet">Mend your words first.</span>}</p>
    </section>
  );
}
