// A button in one of four looks: the one main thing to do, an ordinary one, one in running text, one that takes something away.
import type {ButtonHTMLAttributes} from "react";

export interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  readonly look?: "main" | "plain" | "quiet" | "away";
}

export function Button({look = "plain", className, type = "button", ...rest}: ButtonProps) {
  return <button type={type} className={className ? `${look} ${className}` : look} {...rest} />;
}
