import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { sayLater } from "../words/say-later.ts";
import "./opened.css";

interface OpenedProps {
  readonly title: string;
  /** The name read out, where the title alone does not say what opened. */
  readonly name?: string;
  readonly children: ComponentChildren;
  readonly onClose: () => void;
}

/** What a figure or a question opens to: a sheet over the screen, with its own way back. */
export function Opened({ title, name = title, children, onClose }: OpenedProps) {
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => sheet.current?.showModal(), []);
  return (
    <dialog class="opened" ref={sheet} aria-label={name} onClose={onClose}>
      <h2>{title}</h2>
      {children}
      <form method="dialog" class="opened-foot">
        <button type="submit" class="opened-close">
          {sayLater.plan.close}
        </button>
      </form>
    </dialog>
  );
}
