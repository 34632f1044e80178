import { signal } from "@preact/signals";
import { keptShelf } from "./storage/remembered.ts";

/** Forms that differ from what is stored, by the address of their screen. */
export interface DraftBook<Draft> {
  /** The draft kept for an address. */
  readonly keptDraft: (key: string) => Draft | undefined;
  /** Keeps a draft, so that neither leaving the form nor a phone that ends the app loses it. */
  readonly keepDraft: (key: string, draft: Draft) => void;
  /** Lets a draft go: it was saved, or is not wanted. */
  readonly dropDraft: (key: string) => void;
}

/** How a draft that was kept is read: another version may have kept it. */
type Check<Draft> = (kept: unknown) => { success: boolean; data?: Draft | undefined };

/** Forms that somebody has typed in since the page began. */
const typedIn = signal<ReadonlySet<string>>(new Set());

/** Whether some form was changed here and not saved: the app must not start anew meanwhile. */
export const somethingUnsaved = (): boolean => typedIn.value.size > 0;

function noteTyped(name: string, key: string, unsaved: boolean): void {
  const next = new Set(typedIn.peek());
  if (unsaved) next.add(`${name}/${key}`);
  else next.delete(`${name}/${key}`);
  typedIn.value = next;
}

/**
 * A book of unsaved forms of one kind. What another version kept and this one does not understand
 * stays where it is.
 *
 * @param name - of the kind; never changed, for drafts lie under it
 * @param check - reads a draft
 */
export function draftBook<Draft>(name: string, check: Check<Draft>): DraftBook<Draft> {
  const shelf = keptShelf(`draft-${name}`);
  const read = Object.entries(shelf.read()).flatMap(([key, one]) => {
    const { data } = check(one);
    return data === undefined ? [] : [[key, data] as const];
  });
  const drafts = signal<ReadonlyMap<string, Draft>>(new Map(read));
  return {
    keptDraft: (key) => drafts.value.get(key),
    keepDraft: (key, draft) => {
      drafts.value = new Map(drafts.peek()).set(key, draft);
      noteTyped(name, key, true);
      shelf.write({ ...shelf.read(), [key]: draft });
    },
    dropDraft: (key) => {
      const next = new Map(drafts.peek());
      next.delete(key);
      drafts.value = next;
      noteTyped(name, key, false);
      const others = Object.entries(shelf.read()).filter(([other]) => other !== key);
      shelf.write(Object.fromEntries(others));
    },
  };
}
