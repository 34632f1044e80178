/** What the controls of a page hear from their guard. */
export type GuardNews = "another-contact" | "lost";

/**
 * What every control of a page must know together: how many contacts lie on the glass, and until
 * when all are deaf after an action. Times come from the events.
 */
export interface PressGuard {
  readonly touched: (pointer: number, kind: string, first: boolean) => void;
  readonly lifted: (pointer: number) => void;
  /** The page went out of sight or lost the hand. */
  readonly lost: () => void;
  /** Some control acted: all are deaf for `quiet` ms. */
  readonly acted: (at: number, quiet: number) => void;
  readonly contacts: () => number;
  readonly quietUntil: () => number;
  /** Hears of every contact beside the first, and of loss; returns how to stop hearing. */
  readonly listen: (hear: (news: GuardNews) => void) => () => void;
}

/** A guard that is told of contacts by its caller. */
export function makePressGuard(): PressGuard {
  const down = new Map<number, string>();
  const hearers = new Set<(news: GuardNews) => void>();
  let quietUntil = Number.NEGATIVE_INFINITY;
  const tell = (news: GuardNews) => {
    for (const hear of [...hearers]) hear(news);
  };
  return {
    touched: (pointer, kind, first) => {
      // The first contact of a kind is alone by definition: forget any whose lifting never came,
      // or one lost event would leave the page deaf for good.
      if (first) for (const [id, was] of down) if (was === kind) down.delete(id);
      down.set(pointer, kind);
      if (down.size > 1) tell("another-contact");
    },
    lifted: (pointer) => {
      down.delete(pointer);
    },
    lost: () => {
      down.clear();
      tell("lost");
    },
    acted: (at, quiet) => {
      quietUntil = Math.max(quietUntil, at + quiet);
    },
    contacts: () => down.size,
    quietUntil: () => quietUntil,
    listen: (hear) => {
      hearers.add(hear);
      return () => {
        hearers.delete(hear);
      };
    },
  };
}
