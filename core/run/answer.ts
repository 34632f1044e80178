import type { ReadingKey } from "../method/procedure.ts";
import { accepted, type Refused, type Result, refused } from "../quantity/result.ts";
import { type Bottles, bottlesSchema, type Draft, MOST_AMOUNT, type Weighed } from "./event.ts";
import type { Run, Visit } from "./run.ts";
import { topUpAdvice } from "./top-up-advice.ts";
import { mostInVessel } from "./wash-progress.ts";
import { type WeightRefusal, weigh } from "./weigh.ts";

/** What a step asked for, answered. Volumes in ml, or weighed with their vessel in g. */
export type Answer =
  | {
      readonly of: "milk" | "cloudy-run" | "collected" | "yield" | "top-up";
      readonly ml: number;
    }
  | { readonly of: "cloudy-run" | "yield"; readonly gross: number }
  | { readonly of: "brix"; readonly brix: number }
  | { readonly of: "temperature"; readonly degC: number }
  | { readonly of: "bottled"; readonly bottles: readonly Bottles[]; readonly useBy: number };

/** Why a figure is not taken. */
export type FigureRefusal = WeightRefusal | "reading-above-poured" | "no-bottles";

/** A measuring jug may read so much more than what is known to be in the vessel. Judgement. */
const READ_OVER = 1.05;
/**
 * How far an instrument's scale goes: a refractometer's, and a kitchen thermometer's from a deep
 * freezer to hot fat. Judgement.
 */
export const SCALES = {
  brix: { unit: "brix", low: 0, high: 95 },
  temperature: { unit: "degC", low: -40, high: 200 },
} as const;
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

/** A volume as it was answered: measured out, or worked out from its weight. */
function measuredIn(
  run: Run,
  answer: Exclude<Answer, { of: "brix" | "temperature" | "bottled" }>,
): Result<{ readonly ml: number; readonly weighed?: Weighed }, FigureRefusal> {
  const measured =
    "gross" in answer ? weigh(run, answer.of, answer.gross) : accepted({ ml: answer.ml });
  if (!measured.ok) return measured;
  return refusedVolume(run, answer.of, measured.value.ml) ?? measured;
}

/**
 * Whether a figure can be what an instrument showed.
 *
 * @param value - in degrees Brix or degrees C; of anything else nothing is known here
 */
export function refusedFigure(
  what: ReadingKey,
  value: number,
): Refused<"reading-not-a-number"> | undefined {
  if (what !== "brix" && what !== "temperature") return undefined;
  const { low, high } = SCALES[what];
  return value >= low && value <= high ? undefined : refused("reading-not-a-number");
}

function figureDraft(
  visit: string,
  what: keyof typeof SCALES,
  value: number,
): Result<Draft, FigureRefusal> {
  const { unit } = SCALES[what];
  const reading = { type: "reading.logged", visit, what, value, unit } as const;
  return refusedFigure(what, value) ?? accepted(reading);
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
  if (answer.of === "brix") return figureDraft(visit.key, "brix", answer.brix);
  if (answer.of === "temperature") return figureDraft(visit.key, "temperature", answer.degC);
  const measured = measuredIn(run, answer);
  if (!measured.ok) return measured;
  const { ml } = measured.value;
  switch (answer.of) {
    case "milk":
    case "collected":
      return accepted({ type: "reading.logged", ...at, what: answer.of, value: ml, unit: "ml" });
    case "cloudy-run":
      return accepted({ type: "run.repoured", ...at, ...measured.value });
    case "yield":
      return accepted({ type: "yield.logged", ...at, ...measured.value });
    case "top-up": {
      const { advised, planned } = topUpAdvice(run);
      return accepted({ type: "topup.poured", ...at, ml, advised, planned });
    }
  }
}
