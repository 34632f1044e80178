import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import type { Command } from "../../../core/run/command.ts";
import { decide } from "../../../core/run/decide.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { foldRun } from "../../../core/run/fold.ts";
import { HLC_ZERO, type Hlc } from "../../../core/run/hlc.ts";
import type { Run } from "../../../core/run/run.ts";
import { stampDrafts } from "../../../core/run/stamp.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { planFor } from "./punch-spec.ts";

/** A small washed spec of the tests' own. */
export const WASHED_SPEC: Spec = {
  id: "test-wash",
  name: "Test Wash",
  version: 1,
  lines: [
    { id: "spirit", ingredientId: "brandy-40", amount: { value: 40, unit: "ml" }, heldBack: 0.25 },
    { id: "lemon", ingredientId: "lemon-juice", amount: { value: 20, unit: "ml" }, heldBack: 0 },
    { id: "tea", ingredientId: "black-tea", amount: { value: 30, unit: "ml" }, heldBack: 0 },
    { id: "sugar", ingredientId: "syrup-1-1", amount: { value: 20, unit: "ml" }, heldBack: 0 },
  ],
  wash: { dairyId: "milk-whole", ratio: 0.25, order: "punch-into-milk", filters: 2 },
  topUp: { rule: "proportion" },
  serve: { pour: 90, method: "stirred", glass: "Glass", garnish: "" },
  keepDays: 7,
  notes: "",
};

/** A plan of the test spec, ml in the bottle. @throws when the spec cannot be planned */
export const planOf = (spec: Spec = WASHED_SPEC, volume = 5000): Plan =>
  planFor(spec, { by: "volume", volume });

/** A log that is written by orders, with a clock and ids of its own. */
export class TestBench {
  events: readonly RunEvent[] = [];
  now: number;
  readonly runId: string;
  readonly device: string;
  #ids = 0;
  #last: Hlc = HLC_ZERO;

  constructor(now = 1_000_000_000_000, device = "phone-a", runId = "run-1") {
    this.now = now;
    this.device = device;
    this.runId = runId;
  }

  get run(): Run | undefined {
    return foldRun(this.events);
  }

  /** Carries out an order; the refusal, or nothing. */
  order(command: Command): string | undefined {
    const decision = decide(this.events, this.run, command, this.now);
    if (!decision.ok) return decision.refusal;
    const stamped = stampDrafts(decision.value, {
      runId: this.runId,
      device: this.device,
      act: this.#newId("act"),
      now: this.now,
      last: this.#last,
      notBefore: this.events.at(-1)?.at ?? 0,
      newId: () => this.#newId("event"),
    });
    this.events = [...this.events, ...stamped];
    this.#last = stamped.at(-1)?.hlc ?? this.#last;
    return undefined;
  }

  start(plan: Plan = planOf(), readyBy?: number): void {
    this.order({
      type: "start-run",
      batch: "TW-0101",
      plan,
      procedure: DAIRY_WASH,
      appVersion: "0",
      ...(readyBy === undefined ? {} : { readyBy }),
    });
  }

  /** The act of the latest event. */
  get lastAct(): string {
    return this.events.at(-1)?.act ?? "";
  }

  #newId(kind: string): string {
    this.#ids += 1;
    return `${this.device}-${kind}-${String(this.#ids).padStart(5, "0")}`;
  }
}

/** The run that a bench's log tells of. @throws where none was started */
export function runOf({ run }: TestBench): Run {
  if (run === undefined) throw new RangeError("the bench must have a run");
  return run;
}
