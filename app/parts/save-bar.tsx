import type { ComponentChildren } from "preact";
import "./save-bar.css";

export interface SaveBarProps {
  /** Whether it is saved, in words. */
  readonly says: string;
  /** What went wrong; takes the place of `says`. */
  readonly wrong?: string | undefined;
  /** The one thing to do about it: a button or a link; nothing where there is nothing to do. */
  readonly children?: ComponentChildren;
}

/** The foot of a form, always in sight: how it stands, and the way to save it. */
export function SaveBar({ says, wrong, children }: SaveBarProps) {
  return (
    <div class="save-bar">
      <p class="save-bar-says" role="status" data-wrong={wrong !== undefined}>
        {wrong ?? says}
      </p>
      {children && <div class="save-bar-act">{children}</div>}
    </div>
  );
}
