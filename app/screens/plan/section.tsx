import type { ComponentChildren } from "preact";
import { deskOf, setOpen } from "./kept.ts";

export interface SectionProps {
  readonly specId: string;
  /** Its name among the sections that are kept open. */
  readonly name: string;
  readonly title: string;
  /** What it comes to, readable while it is closed. */
  readonly says: ComponentChildren;
  readonly children: () => ComponentChildren;
}

/** A part of the plan that folds up to one big row; what is folded up is not drawn at all. */
export function Section({ specId, name, title, says, children }: SectionProps) {
  const open = deskOf(specId).open.includes(name);
  return (
    <details
      class="plan-section"
      data-section={name}
      open={open}
      onToggle={(event) => {
        const now = event.currentTarget.open;
        if (now !== open) setOpen(specId, name, now);
      }}
    >
      <summary class="plan-section-head">
        <h2>{title}</h2>
        <p class="plan-section-says">{says}</p>
        <span class="plan-section-mark" aria-hidden="true" />
      </summary>
      {open && <div class="plan-section-body">{children()}</div>}
    </details>
  );
}
