import { useEffect, useState } from "preact/hooks";
import { searchTextOf } from "../../../core/logbook/search.ts";
import { atDesk } from "../../desk.ts";
import { ask, asked, ended, facets, lookAhead, typed } from "./asked.ts";

/** So many at a time keep a slow phone free to answer a finger. */
const AT_ONCE = 150;
/** So long after the last letter the words are looked for, ms. Judgement. */
const SETTLES = 120;

/** Works out what batches are found by, some at a time. @returns whether all of it is there */
function useReadyTexts(): boolean {
  const batches = ended.value;
  const [readyFor, setReadyFor] = useState<typeof batches | undefined>(undefined);
  useEffect(() => {
    let stop: () => void = () => undefined;
    const go = (from: number) => {
      for (const batch of batches.slice(from, from + AT_ONCE)) searchTextOf(batch);
      const next = from + AT_ONCE;
      const more = next < batches.length;
      stop = atDesk().clock.after(0, () => (more ? go(next) : finish()));
    };
    const finish = () => {
      // Worked out here and now, so that opening the filters need not wait for it.
      facets.peek();
      setReadyFor(batches);
    };
    go(0);
    return () => stop();
  }, [batches]);
  return readyFor === batches;
}

/** Looks for the words that were typed once they stand still and everything can be searched. */
export function useSearch(): void {
  const ready = useReadyTexts();
  const text = typed.value;
  useEffect(() => {
    if (!ready || text === asked.peek().text) return;
    const { after } = atDesk().clock;
    let stop = after(SETTLES, () => {
      // Looking and drawing are apart, so that neither keeps a finger waiting for both.
      lookAhead(text);
      stop = after(0, () => ask({ text }));
    });
    return () => stop();
  }, [ready, text]);
}
