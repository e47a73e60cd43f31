// The grade that a kind of flaw or work lets a garment reach at most.
import {grades, type Grade} from "../../state/model.ts";
import {Field} from "../ui/field.tsx";

export function GradeChoice({label, grade, onGrade}: {readonly label: string; readonly grade: Grade | null; onGrade(grade: Grade | null): void}) {
  return (
    <Field label={label}>
      {(tie) => (
        <select {...tie} value={grade ?? ""} onChange={({target}) => onGrade((target.value || null) as Grade | null)}>
          <option value="">any</option>
          {grades.slice(1).map((one) => <option key={one}>{one}</option>)}
        </select>
      )}
    </Field>
  );
}
