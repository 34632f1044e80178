import { accepted, type Refused, type Result, refused } from "../quantity/result.ts";
import { type Bottles, bottlesSchema, type Draft, MOST_AMOUNT } from "./event.ts";
import type { Run, Visit } from "./run.ts";
import { topUpAdvice } from "./top-up-advice.ts";
import { mostInVessel } from "./wash-progress.ts";

/** What a step asked for, answered. Volumes in ml. */
export type Answer =
  | { readonly of: "milk" | "cloudy-run" | "yield" | "top-up"; readonly ml: number }
  | { readonly of: "brix"; readonly brix: number }
  | { readonly of: "bottled"; readonly bottles: readonly Bottles[]; readonly useBy: number };

/** Why a figure is not taken. */
export type FigureRefusal = "reading-not-a-number" | "reading-above-poured" | "no-bottles";

/** A measuring jug may read so much more than what is known to be in the vessel. Judgement. */
const READ_OVER = 1.05;
/** A refractometer's scale ends here, degrees Brix. */
const MOST_BRIX = 95;
/** Poured in from outside the vessel: more than this is a slip of the finger, ml. */
const MOST_POURED = 1_000_000;

/**
 * Whether a volume can be what was read. A slip of a digit is the usual mistake: what comes out of
 * the vessel cannot exceed what went in.
 *
 * @param what - milk and top-up come from outside the vessel, everything else out of it
 * @param ml - as typed
 * @returns why it is not taken, with the most it could be in ml; nothing where it is
 */
export function refusedVolume(
  run: Run,
  what: string,
  ml: number,
): Refused<"reading-not-a-number" | "reading-above-poured"> | undefined {
  if (!Number.isFinite(ml) || ml < 0) return refused("reading-not-a-number");
  const outside = what === "milk" || what === "top-up";
  const most = outside ? MOST_POURED : Math.min(MOST_AMOUNT, mostInVessel(run) * READ_OVER);
  return ml > most ? refused("reading-above-poured", { ml, most }) : undefined;
}

/**
 * The event that keeps an answer.
 *
 * @param run - as it stands when the answer is given
 * @param visit - the passage it answers
 * @param answer - what was measured or counted
 */
export function answerDraft(run: Run, visit: Visit, answer: Answer): Result<Draft, FigureRefusal> {
  const at = { visit: visit.key };
  if (answer.of === "bottled") {
    const { bottles, useBy } = answer;
    const filled = bottles.every((one) => bottlesSchema.safeParse(one).success);
    if (bottles.length === 0 || !filled) return refused("no-bottles");
    return accepted({ type: "run.bottled", ...at, bottles: [...bottles], useBy });
  }
  if (answer.of === "brix") {
    const { brix } = answer;
    const readable = brix >= 0 && brix <= MOST_BRIX;
    return readable
      ? accepted({ type: "reading.logged", ...at, what: "brix", value: brix, unit: "brix" })
      : refused("reading-not-a-number");
  }
  const { ml } = answer;
  const wrong = refusedVolume(run, answer.of, ml);
  if (wrong !== undefined) return wrong;
  switch (answer.of) {
    case "milk":
      return accepted({ type: "reading.logged", ...at, what: "milk", value: ml, unit: "ml" });
    case "cloudy-run":
      return accepted({ type: "run.repoured", ...at, ml });
    case "yield":
      return accepted({ type: "yield.logged", ...at, ml });
    case "top-up": {
      const { advised, planned } = topUpAdvice(run);
      return accepted({ type: "topup.poured", ...at, ml, advised, planned });
    }
  }
}
