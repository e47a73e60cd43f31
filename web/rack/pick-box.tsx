// The box that picks a garment for a common change.
import type {RackRow} from "../../store/model.ts";

export function PickBox({row, on, onPick}: {row: RackRow; on: boolean; onPick: (withShift: boolean) => void}) {
  return <input type="checkbox" className="pick" checked={on} aria-label={`Pick ${row.number}`} onChange={({nativeEvent}) => onPick((nativeEvent as MouseEvent).shiftKey === true)} />;
}
