// Twenty batches for five days, as a bar with one person, two filter stands and a fridge has them.
import type { DayPlan } from "../../core/board/schedule/day-plan.ts";
import type { Job, JobStep, Limits, Use } from "../../core/board/schedule/job.ts";
import { jobOf } from "../../core/board/schedule/job-of.ts";
import { usualDrip } from "../../core/method/drip/usual-drip.ts";
import type { Procedure } from "../../core/method/procedure.ts";
import { PROCEDURES } from "../../core/method/procedures.ts";

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const BATCHES = 20;
/** A Monday, 8:00 by its own clock. */
export const MONDAY = 20_416 * DAY + 8 * HOUR;
/** What the batches are, over and over: as many washes as everything else. */
const KINDS = ["dairy-wash", "long-infusion", "dairy-wash", "fat-wash", "dairy-wash", "cordial"];
const OTHERS = ["dairy-wash", "sherbet", "short-infusion", "syrup"];

function procedureOf(id: string): Procedure {
  const found = PROCEDURES.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`no procedure ${id}`);
  return found;
}

/** A batch of 3 to 7 litres, ready on one of five days, no two of a day at once. */
function batch(i: number): Job {
  const kinds = [...KINDS, ...OTHERS];
  const procedure = procedureOf(kinds[i % kinds.length] ?? "");
  const litres = 3 + ((i * 7) % 5);
  const expected: Record<string, number> = {};
  const uses: Record<string, readonly Use[]> = {};
  for (const { id, work, stands, longestFor } of procedure.steps) {
    if (longestFor !== undefined) expected[id] = longestFor;
    if (work === "drip") expected[id] = usualDrip(litres * 800, 2);
    if (stands === "fridge" || stands === "freezer") {
      uses[id] = [{ resource: stands, amount: litres }];
    }
  }
  const days = (i % 5) + (i % 5 < 2 ? 1.2 : 0.4);
  const readyBy = MONDAY + days * DAY + (i % 4) * 1.5 * HOUR + 6 * HOUR;
  return jobOf(procedure, { id: `b${i}`, name: procedure.id, readyBy, expected, uses }).job;
}

/** The batches, none begun. */
export const WEEK: readonly Job[] = Array.from({ length: BATCHES }, (_, i) => batch(i));

/** Nobody is in from 22:00 to 8:00. */
const nights = Array.from({ length: 10 }, (_, day) => ({
  resource: "person",
  amount: 1,
  from: MONDAY + day * DAY + 14 * HOUR,
  to: MONDAY + (day + 1) * DAY,
}));

export const ROOM: Limits = {
  capacity: { person: 1, "filter-stand": 2, fridge: 40, freezer: 20, burner: 2 },
  taken: nights,
};

/** The batches as they stand at a moment when a plan was carried out, one drip so much slower. */
export function carriedOut(plan: DayPlan, now: number, slowBy: number): readonly Job[] {
  let slowed = false;
  const step = (job: Job, one: JobStep): JobStep => {
    const placed = plan.placed.find((at) => at.job === job.id && at.step === one.id);
    if (placed === undefined || placed.startAt > now) return one;
    const slow = !slowed && one.id === "slow-drip" && placed.endAt > now;
    slowed ||= slow;
    return { ...one, fixedStart: placed.startAt, forMs: one.forMs + (slow ? slowBy : 0) };
  };
  const gone = WEEK.map((job) => ({ ...job, steps: job.steps.map((one) => step(job, one)) }));
  if (!slowed) throw new RangeError("a drip must go on at that moment");
  return gone;
}
