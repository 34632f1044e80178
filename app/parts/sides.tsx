import type { ComponentChildren } from "preact";
import { LETTERS } from "./chart-mark.tsx";
import "./sides.css";

/** What stands behind each letter. */
export function Lettered({ sides }: { readonly sides: readonly ComponentChildren[] }) {
  return (
    <ul class="sides">
      {sides.map((side, at) => (
        <li key={LETTERS[at]} class="sides-one">
          <span class="sides-letter">{LETTERS[at]}</span>
          <span>{side}</span>
        </li>
      ))}
    </ul>
  );
}

interface SideRowProps {
  readonly name: string;
  /** One for each side; nothing where `absent` is said instead. */
  readonly texts: readonly (string | undefined)[];
  readonly absent?: string;
  readonly children?: ComponentChildren;
}

/** One thing: its name, what each side has of it, and what is said below. */
export function SideRow({ name, texts, absent, children }: SideRowProps) {
  return (
    <li class="sides-row">
      <h3>{name}</h3>
      <dl class="sides-values">
        {texts.map((text, at) => (
          <div key={LETTERS[at]}>
            <dt>{LETTERS[at]}</dt>
            <dd class={text === undefined ? "sides-absent" : undefined}>{text ?? absent}</dd>
          </div>
        ))}
      </dl>
      {children}
    </li>
  );
}
