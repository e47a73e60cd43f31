// Brings a list of garments onto the rack.
import {useMemo} from "react";
import type {Content} from "../../store/model.ts";
import {BringIn} from "./bring-in.tsx";
import {entryNames, guessColumns} from "./guess-column.ts";
import {PreviewTable} from "./preview-table.tsx";
import {sayGarments} from "./say.ts";
import {useMarkNames} from "./use-mark-names.ts";

interface Row {
  readonly line: number;
  readonly content: Content;
}

const preview = (rows: readonly Row[], ready: number) => <PreviewTable rows={rows} ready={ready} />;

export function BringInScreen() {
  const names = useMarkNames();
  const groups = useMemo(() => {
    const marks = [...names].filter(([id]) => id !== "rows").sort(([, a], [, b]) => a.localeCompare(b));
    return [{name: "The garment", targets: Object.entries(entryNames)}, {name: "Marks", targets: marks}];
  }, [names]);
  return (
    <BringIn
      path="/api/rack/import"
      back={{href: "/rack", name: "Rack", to: "To the rack"}}
      title="Bring in a list"
      about="A table (CSV) with a line of names, JSON, or JSON with one garment a line."
      example={"number,title,kept\n0501,Chore coat,bench"}
      count={sayGarments}
      then="; dates are being worked out."
      groups={groups}
      guess={guessColumns}
      preview={preview}
    />
  );
}
