import type { RunEvent } from "../../../core/run/event.ts";
import { demoSpec, type Played, planned, started } from "../../support/world/play-run.ts";

const MINUTE = 60_000;
const of = (name: string) => planned(demoSpec(name), { by: "serves", serves: 30 });

/** Rests for another 37 minutes. */
const resting = (now: number): Played =>
  started("run-rest", "PB-1", now - 46 * MINUTE)
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: 1000 } }, 2)
    .finish({}, 1);

/** Steeps for another 11 hours and 40 minutes. */
const steeping = (now: number): Played =>
  started("run-steep", "SB-1", now - 30 * MINUTE, of("Smoked Barley")).finish({}, 10);

/** Drips, and is to be looked at in 24 minutes; two readings in. */
const dripping = (now: number): Played =>
  started("run-drip", "BFS-1", now - 141 * MINUTE, of("Boatyard Flip-Side"))
    .finish({}, 5)
    .finish({ answer: { of: "milk", ml: 600 } }, 1)
    .finish({}, 1)
    .finish({}, 60)
    .finish({}, 3)
    .finish({}, 2)
    .finish({ answer: { of: "cloudy-run", ml: 200 } }, 2)
    .finish({ look: "clear" }, 1)
    .then(
      { type: "log-reading", visit: "slow-drip#1", what: "collected", value: 400, unit: "ml" },
      30,
    )
    .then(
      { type: "log-reading", visit: "slow-drip#1", what: "collected", value: 650, unit: "ml" },
      30,
    );

/** Mingles for another two hours and three quarters. */
const mingling = (now: number): Played =>
  started("run-mingle", "BR-1", now - 25 * MINUTE, of("Brown-Butter Rye"))
    .finish({}, 5)
    .finish({}, 5);

const events = (runs: readonly Played[]): readonly RunEvent[] => runs.flatMap((run) => run.events);

/** Three waits, none of them due within the time a measurement takes. */
export const threeRuns = (now: number): readonly RunEvent[] =>
  events([resting(now), steeping(now), dripping(now)]);

/** The batches of a long shift. */
export const fourRuns = (now: number): readonly RunEvent[] =>
  events([resting(now), steeping(now), dripping(now), mingling(now)]);
