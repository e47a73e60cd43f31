// A labelled field: the label above, a hint and what is wrong below, tied together for those who listen.
import {useId, type ReactNode} from "react";

export interface FieldProps {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly wrong?: string | null;
  /** Given the attributes that tie the control to its label. */
  readonly children: (tie: {readonly id: string; readonly "aria-describedby"?: string; readonly "aria-invalid"?: true}) => ReactNode;
}

export function Field({label, hint, wrong, children}: FieldProps) {
  const id = useId();
  const about = `${id}-about`;
  const told = Boolean(hint) || Boolean(wrong);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children({id, ...(told && {"aria-describedby": about}), ...(wrong && {"aria-invalid": true as const})})}
      {told && (
        <p id={about} className="field-about">
          {wrong && <strong>{wrong}{hint ? ". " : ""}</strong>}
          {hint}
        </p>
      )}
    </div>
  );
}
