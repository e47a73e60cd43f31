// The shop as papers name it: its name and address on sheets and tags, its country for the cautions and the usual page.
import {useEffect, useState} from "react";
import type {Owner} from "../../commands/rack/settings.ts";
import {Button} from "../ui/button.tsx";
import {Field} from "../ui/field.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import {useSetting} from "../worth/terms/use-setting.ts";

export function ShopPanel({onKept}: {readonly onKept: (owner: Owner) => void}) {
  const {value: kept, problems, save} = useSetting<Owner>("owner");
  const [owner, setOwner] = useState<Owner>({name: "", country: "", address: []});
  // What was kept, here or by somebody else in between, takes the place of what stands in the fields.
  useEffect(() => {
    if (!kept) return;
    setOwner(kept);
    onKept(kept);
  }, [kept, onKept]);
  const changed = kept !== null && JSON.stringify(kept) !== JSON.stringify(owner);
  const wrong = /^(?:[A-Z]{2})?$/.test(owner.country) ? null : "two letters";
  const keep = () => save({...owner, address: owner.address.map((line) => line.trim()).filter((line) => line !== "")});
  return (
    <details className="shop-panel">
      <summary>{kept?.name ? `Your shop: ${kept.name}` : "Your shop, as papers name it"}</summary>
      <ProblemList problems={problems} />
      {kept && <div className="shop-fields">
        <Field label="Name">{(tie) => <input {...tie} value={owner.name} maxLength={200} onChange={({target}) => setOwner({...owner, name: target.value})} />}</Field>
        <Field label="Address, a line each">{(tie) => <textarea {...tie} rows={3} value={owner.address.join("\n")} onChange={({target}) => setOwner({...owner, address: target.value.split("\n").slice(0, 8)})} />}</Field>
        <Field label="Country, in two letters" hint="US, GB, DE …: the cautions on papers follow it." wrong={wrong}>{(tie) => <input {...tie} value={owner.country} maxLength={2} size={4} autoCapitalize="characters" onChange={({target}) => setOwner({...owner, country: target.value.toUpperCase()})} />}</Field>
        <p><Button look={changed ? "main" : "plain"} disabled={!changed || wrong !== null} onClick={() => void keep()}>{changed ? "Keep it" : "Kept"}</Button></p>
      </div>}
    </details>
  );
}
