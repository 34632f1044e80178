import type { ComponentChildren } from "preact";
import "./link-button.css";

export interface LinkButtonProps {
  readonly href: string;
  readonly children: ComponentChildren;
  /** The name read out, where several links on a screen would sound alike. */
  readonly name?: string | undefined;
  readonly tone?: "main" | "plain" | "quiet";
}

/** A way to another screen, as big as a button. */
export function LinkButton({ href, children, name, tone = "plain" }: LinkButtonProps) {
  return (
    <a class="link-button" data-tone={tone} href={href} aria-label={name}>
      {children}
    </a>
  );
}
