import { type ReadonlySignal, signal } from "@preact/signals";

/** Forms that differ from what is stored, by the address of their screen. */
export interface DraftBook<Draft> {
  /** The draft kept for an address. */
  readonly keptDraft: (key: string) => Draft | undefined;
  /** Keeps a draft, so that leaving the form and coming back loses nothing. */
  readonly keepDraft: (key: string, draft: Draft) => void;
  /** Lets a draft go: it was saved, or is not wanted. */
  readonly dropDraft: (key: string) => void;
}

const books: ReadonlySignal<ReadonlyMap<string, unknown>>[] = [];

/** Whether some form differs from what is stored: the app must not start anew meanwhile. */
export const somethingUnsaved = (): boolean => books.some((drafts) => drafts.value.size > 0);

/** A book of unsaved forms of one kind; gone with the page. */
export function draftBook<Draft>(): DraftBook<Draft> {
  const drafts = signal<ReadonlyMap<string, Draft>>(new Map());
  books.push(drafts);
  return {
    keptDraft: (key) => drafts.value.get(key),
    keepDraft: (key, draft) => {
      drafts.value = new Map(drafts.value).set(key, draft);
    },
    dropDraft: (key) => {
      const next = new Map(drafts.value);
      next.delete(key);
      drafts.value = next;
    },
  };
}
