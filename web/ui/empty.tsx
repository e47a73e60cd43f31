// What stands where there is nothing yet: what belongs here, and how it gets here.
import type {ReactNode} from "react";

export function Empty({title, children}: {readonly title?: string; readonly children: ReactNode}) {
  return (
    <div className="empty">
      {title && <h2>{title}</h2>}
      {children}
    </div>
  );
}
