import type { Planned } from "../../../core/board/planned.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { HOUR, MINUTE } from "../phone/walk-page.ts";
import { DEMO_SPECS, demoHistory } from "./demo-bar.ts";
import { plannedBatch } from "./planned-batch.ts";
import { demoSpec, type Played, planned, started } from "./play-run.ts";

/** An afternoon at the invented bar. */
export interface World {
  readonly events: readonly RunEvent[];
  readonly planned: readonly Planned[];
  readonly specs: readonly Spec[];
}

const of = (name: string) => planned(demoSpec(name), { by: "serves", serves: 30 });

/** Rests for another 37 minutes. */
const resting = (now: number): Played =>
  started("run-rest", "BFS-1003", now - 31 * MINUTE, of("Boatyard Flip-Side"))
    .finish({}, 5)
    .finish({ answer: { of: "milk", ml: 600 } }, 1)
    .finish({}, 2);

/** Drips, twice read, and asks for the next reading in 24 minutes. */
const dripping = (now: number): Played =>
  ripening(now - 62 * MINUTE)
    .finish({ look: "clear" }, 1)
    .then({ type: "note-shape", visit: "slow-drip#1", shape: "straight" }, 1)
    .then(
      { type: "log-reading", visit: "slow-drip#1", what: "collected", value: 1400, unit: "ml" },
      30,
    )
    .then(
      { type: "log-reading", visit: "slow-drip#1", what: "collected", value: 2300, unit: "ml" },
      30,
    );

/** Poured back once and once more looked at: asks since a moment whether it is clear. */
const ripening = (now: number): Played =>
  started("run-pear", "PB-1003", now - 110 * MINUTE)
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: 1000 } }, 2)
    .finish({}, 5)
    .finish({}, 65)
    .finish({}, 4)
    .finish({}, 3)
    .finish({ answer: { of: "cloudy-run", ml: 400 } }, 3)
    .finish({ look: "cloudy" }, 3)
    .finish({ answer: { of: "cloudy-run", ml: 250 } }, 3);

const history = (now: number): readonly RunEvent[] => demoHistory(now).flat();

const tomorrow = (now: number): readonly Planned[] => [
  plannedBatch("planned-pear", now + 27 * HOUR, "Pear Beacon"),
];

/** Two batches wait, one is planned for tomorrow, and half a year of batches lies behind. */
export const quietAfternoon = (now: number): World => ({
  events: [...resting(now).events, ...dripping(now).events, ...history(now)],
  planned: tomorrow(now),
  specs: DEMO_SPECS,
});

/** The same, but one of them wants somebody now. */
export const itRings = (now: number): World => ({
  events: [...resting(now).events, ...ripening(now).events, ...history(now)],
  planned: tomorrow(now),
  specs: DEMO_SPECS,
});
