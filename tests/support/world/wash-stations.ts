import type { RunEvent } from "../../../core/run/event.ts";
import { type Played, started } from "./play-run.ts";

/** A batch standing at a step. */
export interface Station {
  readonly step: string;
  readonly events: readonly RunEvent[];
  /** When the step was begun, epoch ms. */
  readonly since: number;
}

const station = (step: string, { events }: Played): Station => ({
  step,
  events,
  since: events.at(-1)?.at ?? 0,
});

/**
 * A batch at each of its steps in turn, cloudy once.
 *
 * @param at - when it was started, epoch ms
 */
export function stationsOf(runId: string, batch: string, at: number): readonly Station[] {
  const build = started(runId, batch, at);
  const { milk: planned, yield: coming, heldBackMl } = build.run.plan;
  const milk = build.finish({}, 20);
  const pour = milk.finish({ answer: { of: "milk", ml: planned?.ml ?? 0 } }, 2);
  const curdle = pour.finish({}, 5);
  const filter = curdle.finish({}, 60);
  const pass = filter.finish({}, 4);
  const rePour = pass.finish({}, 2);
  const clear = rePour.finish({ answer: { of: "cloudy-run", ml: 400 } }, 3);
  const again = clear.finish({ look: "cloudy" }, 2);
  const drip = again
    .finish({ answer: { of: "cloudy-run", ml: 250 } }, 3)
    .finish({ look: "clear" }, 3);
  const through = drip.finish({}, 300);
  const topUp = through.finish(
    { answer: { of: "yield", ml: Math.round((coming?.expected ?? 0) * 0.9) } },
    5,
  );
  const bottle = topUp.finish({ answer: { of: "top-up", ml: Math.round(heldBackMl * 0.9) } }, 5);
  const useBy = at + 7 * 24 * 3_600_000;
  const label = bottle.finish(
    { answer: { of: "bottled", bottles: [{ count: 7, size: 700 }], useBy } },
    15,
  );
  const all = {
    build,
    milk,
    pour,
    curdle,
    "wet-filter": filter,
    "first-pass": pass,
    "re-pour": rePour,
    "check-clear": clear,
    "re-pour, again": again,
    "slow-drip": drip,
    yield: through,
    "top-up": topUp,
    bottle,
    label,
    finished: label.finish({}, 10),
  };
  return Object.entries(all).map(([step, run]) => station(step, run));
}

/** The same, at one of its steps. */
export function stationAt(runId: string, batch: string, at: number, step: string): Station {
  const found = stationsOf(runId, batch, at).find((one) => one.step === step);
  if (found === undefined) throw new RangeError(`the wash has no step ${step}`);
  return found;
}

/**
 * A bench full of batches, one at each step, each just come there: `run-milk`, `run-pour`, …
 *
 * @param now - when all of them came to their steps, epoch ms
 */
export function allStations(now: number): readonly (Station & { readonly runId: string })[] {
  return stationsOf("run", "PB", 0).map(({ step, since }, at) => {
    const runId = `run-${step.replace(/\W+/gu, "-")}`;
    return { ...stationAt(runId, `PB-${at + 1}`, now - since, step), runId };
  });
}
