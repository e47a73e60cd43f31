// The first garments of a list as they would stand on the rack.
import {sayGarments, sayMoney} from "./say.ts";
import type {Content} from "../../store/model.ts";

export function PreviewTable({rows, ready}: {rows: readonly {readonly line: number; readonly content: Content}[]; ready: number}) {
  return (
    <section aria-label="As they would be brought in">
      <h2>{rows.length < ready ? `The first ${rows.length} of ${sayGarments(ready)}` : sayGarments(ready)}</h2>
      <div className="wide-table" tabIndex={0} role="group" aria-label="The first garments">
        <table>
          <thead><tr>{["Line", "Number", "Title", "Kind", "Maker", "Marks", "Kept", "Standing", "Asking", "Tags"].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
          <tbody>
            {rows.map(({line, content: {garment, place, standing, asked, tags}}) => (
              <tr key={line}>
                <td className="code quiet">{line}</td>
                <th scope="row" className="code">{garment.garment}</th>
                <td>{garment.title}</td>
                <td>{garment.type}</td>
                <td>{[garment.maker ?? []].flat().join(" or ")}</td>
                <td className="code">{Object.keys(garment.saw).length || ""}</td>
                <td>{place}</td>
                <td>{standing}</td>
                <td className="code">{sayMoney(asked)}</td>
                <td>{tags.join(", ")}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
