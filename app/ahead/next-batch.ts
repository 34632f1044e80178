import { computed } from "@preact/signals";
import { leadTimeOf } from "../../core/board/lead-time.ts";
import { type Parts, partsOf } from "../../core/board/plan-ahead.ts";
import type { Planned } from "../../core/board/planned.ts";
import { runsOutAt } from "../../core/board/run-out.ts";
import { shelfOf } from "../../core/board/shelf.ts";
import type { BatchRecord } from "../../core/logbook/record.ts";
import { type Usage, usageOf } from "../../core/logbook/usage.ts";
import { procedureFor } from "../../core/method/procedures.ts";
import { DAY, MINUTE } from "../../core/quantity/time-units-table.ts";
import type { Plan } from "../../core/spec/plan.ts";
import { planBatch } from "../../core/spec/plan-batch.ts";
import { roundedPlan } from "../../core/spec/rounded-plan.ts";
import { freshId } from "../desk.ts";
import { house, shelf, tools } from "../house.ts";
import { specBook } from "../pantry.ts";
import { openRuns, ownProcedures, records } from "../state.ts";
import { minute, waiting } from "./prep.ts";

/** How long what is there will last, and when the next batch has to be begun. */
export interface NextBatch {
  readonly specId: string;
  readonly name: string;
  /** One serve, ml. */
  readonly pour: number;
  readonly usage: Usage;
  /** When nothing is left, epoch ms; now where nothing is. */
  readonly outAt: number;
  /** How it was sized last time. */
  readonly size: BatchRecord["size"];
  /** Nothing where its spec can no longer be planned. */
  readonly startBy?: number;
  /** What is done about it already. */
  readonly doing?: "planned" | "made";
}

/** As far back as `usageOf` looks, and a little: older batches need not be looked through. */
const LOOKED_BACK = 40 * DAY;

const bottledLately = computed(() => {
  const since = minute.value - LOOKED_BACK;
  const bySpec = new Map<string, BatchRecord[]>();
  for (const record of records.value) {
    const { stock, bottled, specId } = record;
    if (stock === undefined || bottled === undefined) continue;
    const last = Math.max(bottled.at, stock.poured.at(-1)?.at ?? 0);
    if (last >= since) bySpec.set(specId, [...(bySpec.get(specId) ?? []), record]);
  }
  return bySpec;
});

/** A plan in steps of the house's jigger or scale, where it wants that and they can measure it. */
function asPoured(plan: Plan): Plan {
  const measured = tools.value && roundedPlan(plan, tools.value, house.value);
  return measured?.ok ? measured.value.plan : plan;
}

/** The batch that would be made again, as it stands on the prep list. */
function again(specId: string, size: BatchRecord["size"], readyBy: number): Planned | undefined {
  const spec = specBook.value.get(specId);
  if (spec === undefined) return undefined;
  const plan = planBatch(spec, shelf.value, size, house.value);
  const procedure = procedureFor(spec, ownProcedures.value);
  if (!plan.ok || procedure === undefined) return undefined;
  return { id: freshId(), plan: asPoured(plan.value), procedure, readyBy, changes: [] };
}

function doingOf(specId: string): Pick<NextBatch, "doing"> {
  if (openRuns.value.some(({ plan }) => plan.spec.id === specId)) return { doing: "made" };
  return waiting.value.some(({ plan }) => plan.spec.id === specId) ? { doing: "planned" } : {};
}

function nextOf(specId: string, batches: readonly BatchRecord[]): readonly NextBatch[] {
  const usage = usageOf(batches, minute.value);
  const [latest] = batches.toSorted((a, b) => b.startedAt - a.startedAt);
  if (usage === undefined || latest === undefined) return [];
  const { name, pour, size } = latest;
  const outAt = runsOutAt(shelfOf(batches, minute.value), usage.mlPerDay, minute.value);
  const batch = again(specId, size, outAt);
  const startBy =
    batch === undefined ? {} : { startBy: outAt - leadTimeOf(batch.plan, batch.procedure) };
  return [{ specId, name, pour, usage, outAt, size, ...startBy, ...doingOf(specId) }];
}

/** Each spec whose use is known, the first to be begun first. Worked out anew each minute. */
export const nextBatches = computed<readonly NextBatch[]>(() =>
  [...bottledLately.value]
    .flatMap(([specId, batches]) => nextOf(specId, batches))
    .toSorted((a, b) => (a.startBy ?? a.outAt) - (b.startBy ?? b.outAt)),
);

/**
 * A next batch as it goes onto the prep list, ready when the last of it is poured, with what the
 * house makes itself for it.
 *
 * @returns nothing where its spec can no longer be planned
 */
export function plannedAgain(next: NextBatch): readonly Planned[] | undefined {
  const { specId, size, outAt, startBy = outAt } = next;
  // What should have been begun already cannot be ready any sooner than if it is begun now.
  const readyBy = Math.ceil((outAt + Math.max(0, minute.value - startBy)) / MINUTE) * MINUTE;
  const batch = again(specId, size, readyBy);
  if (batch === undefined) return undefined;
  const parts: Parts = partsOf(batch, {
    cupboard: shelf.value,
    specs: specBook.value,
    rules: house.value,
    procedures: ownProcedures.value,
    newId: freshId,
  });
  return [batch, ...parts.planned];
}
