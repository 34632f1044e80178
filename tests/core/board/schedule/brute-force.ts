import fc from "fast-check";
import type { Job, JobStep, Limits } from "../../../../core/board/schedule/job.ts";

// Everything below counts in slots of one minute and knows nothing of how the schedule is found.
export const SLOT = 60_000;

/** Start slots of the steps of each job. */
export type Slots = readonly (readonly number[])[];

const slots = (ms: number): number => ms / SLOT;

/** Slots at which a step may begin, first and last, given those before it. */
function span(job: Job, now: number, before: readonly number[]): readonly [number, number] {
  const at = before.length;
  const rest = job.steps.slice(at).reduce((sum, { forMs }) => sum + slots(forMs), 0);
  const latest = slots(job.readyBy) - rest;
  const { fixedStart, forMs = 0, mayWaitBefore = 1e17 } = job.steps[at] ?? {};
  if (fixedStart !== undefined) {
    const isOver = at === job.steps.length - 1 && fixedStart + forMs <= now;
    const pinned = slots(fixedStart);
    return [pinned, isOver ? pinned : Math.min(pinned, latest)];
  }
  const last = before.at(-1);
  if (last === undefined) return [slots(Math.max(now, job.earliest ?? 0)), latest];
  const free = last + slots(job.steps[at - 1]?.forMs ?? 0);
  return [Math.max(slots(now), free), Math.min(free + slots(mayWaitBefore), latest)];
}

/** Every way to place one job's steps by itself. */
function* placings(job: Job, now: number, before: readonly number[] = []): Generator<number[]> {
  if (before.length === job.steps.length) {
    yield [...before];
    return;
  }
  const [first, last] = span(job, now, before);
  for (let slot = first; slot <= last; slot += 1) yield* placings(job, now, [...before, slot]);
}

const people = (step: JobStep): number => {
  const told = step.uses.filter(({ resource }) => resource === "person");
  if (told.length > 0) return told.reduce((sum, { amount }) => sum + amount, 0);
  return step.kind === "hands-on" ? 1 : 0;
};

interface Piece {
  readonly resource: string;
  readonly amount: number;
  readonly from: number;
  readonly to: number;
  readonly begun: boolean;
  readonly knownTo: number;
}

function piecesOf(job: Job, starts: readonly number[], now: number): Piece[] {
  const ends = job.steps.map((step, i) => (starts[i] ?? 0) + slots(step.forMs));
  const known = job.steps.findLastIndex((step) => step.fixedStart !== undefined);
  const piece = (resource: string, amount: number, first: number, last: number): Piece => ({
    resource,
    amount,
    from: starts[first] ?? 0,
    to: ends[last] ?? 0,
    begun: (job.steps[first]?.fixedStart ?? Number.POSITIVE_INFINITY) <= now,
    knownTo: Math.min(first <= known ? (ends[known] ?? 0) : -1, ends[last] ?? 0),
  });
  const own = job.steps.flatMap((step, i) => [
    piece("person", people(step), i, i),
    ...step.uses
      .filter(({ resource }) => resource !== "person")
      .map(({ resource, amount }) => piece(resource, amount, i, i)),
  ]);
  const place = (id: string) => job.steps.findIndex((step) => step.id === id);
  const held = (job.holds ?? []).map(({ resource, amount, fromStep, toStep }) =>
    piece(resource, amount, place(fromStep), place(toStep)),
  );
  return [...own, ...held];
}

/** Whether all jobs fit together, slot by slot. What has begun together already fits. */
export function fitsTogether(
  jobs: readonly Job[],
  starts: Slots,
  limits: Limits,
  now: number,
): boolean {
  const taken = (limits.taken ?? []).map(({ resource, amount, from, to }) => ({
    resource,
    amount,
    from: slots(from),
    to: slots(to),
    begun: from <= now,
    knownTo: slots(to),
  }));
  const pieces = [
    ...jobs.flatMap((job, i) => piecesOf(job, starts[i] ?? [], now)),
    ...taken,
  ].filter(({ amount, from, to }) => amount > 0 && to > from);
  const last = Math.max(0, ...pieces.map(({ to }) => to));
  for (const [resource, most] of Object.entries(limits.capacity)) {
    const mine = pieces.filter((piece) => piece.resource === resource);
    for (let slot = 0; slot < last; slot += 1) {
      const here = mine.filter(({ from, to }) => from <= slot && slot < to);
      const isFact =
        here.every(({ begun }) => begun) || here.every(({ knownTo }) => slot < knownTo);
      if (!isFact && here.reduce((sum, { amount }) => sum + amount, 0) > most) return false;
    }
  }
  return true;
}

/** The slot at which a job next wants somebody. */
const nextOf = (job: Job, starts: readonly number[]): number => {
  const open = job.steps.findIndex((step) => step.fixedStart === undefined);
  return open < 0 ? 0 : (starts[open] ?? 0);
};

/** The sum of the latest next starts over every plan there is; nothing where there is none. */
export function bruteForce(
  jobs: readonly Job[],
  limits: Limits,
  now: number,
): { readonly worth: number; readonly starts: Slots } | undefined {
  const each = jobs.map((job) => [...placings(job, now)]);
  let best: { worth: number; starts: Slots } | undefined;
  const walk = (at: number, starts: number[][], worth: number): void => {
    const job = jobs[at];
    if (job === undefined) {
      if (best === undefined || worth > best.worth) best = { worth, starts };
      return;
    }
    for (const placing of each[at] ?? []) {
      const next = [...starts, placing];
      // A part that does not fit never fits with more beside it.
      if (fitsTogether(jobs.slice(0, at + 1), next, limits, now)) {
        walk(at + 1, next, worth + nextOf(job, placing));
      }
    }
  };
  walk(0, [], 0);
  return best;
}

const use = (resources: readonly string[]) =>
  fc.record({ resource: fc.constantFrom(...resources), amount: fc.integer({ min: 0, max: 2 }) });

const anyStep = fc.record(
  {
    kind: fc.constantFrom("hands-on" as const, "wait" as const),
    forMs: fc.integer({ min: 1, max: 3 }).map((n) => n * SLOT),
    uses: fc.array(use(["stand", "fridge", "person"]), { maxLength: 1 }),
    mayWaitBefore: fc.integer({ min: 0, max: 2 }).map((n) => n * SLOT),
  },
  { requiredKeys: ["kind", "forMs", "uses"] },
);

/** A small job ready within a few slots of `now`, perhaps with steps that have begun. */
export const anyJob = (id: string, now: number, mostSteps = 3): fc.Arbitrary<Job> =>
  fc
    .record({
      steps: fc.array(anyStep, { minLength: 1, maxLength: mostSteps }),
      room: fc.integer({ min: 1, max: 9 }),
      begun: fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined, freq: 3 }),
      held: fc.option(fc.tuple(use(["stand", "fridge"]), fc.nat(2), fc.nat(2)), { nil: undefined }),
      earliest: fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined }),
    })
    .map(({ steps: bare, room, begun, held, earliest }) => {
      const steps = bare.map((step, i): JobStep => {
        const id = `s${i}`;
        if (begun === undefined || i > 0) return { id, ...step };
        return { id, ...step, fixedStart: now - Math.min(begun * SLOT, now) };
      });
      const last = steps.length - 1;
      const ends = [Math.min(held?.[1] ?? 0, last), Math.min(held?.[2] ?? 0, last)];
      const holds =
        held === undefined
          ? []
          : [{ ...held[0], fromStep: `s${Math.min(...ends)}`, toStep: `s${Math.max(...ends)}` }];
      return {
        id,
        name: id,
        readyBy: now + room * SLOT,
        steps,
        holds,
        ...(earliest === undefined ? {} : { earliest: now + earliest * SLOT }),
      };
    });

/** Limits for small jobs, perhaps with something taken for a while. */
export const anyLimits = (now: number): fc.Arbitrary<Limits> =>
  fc.record({
    capacity: fc.record({
      person: fc.integer({ min: 1, max: 2 }),
      stand: fc.integer({ min: 1, max: 3 }),
      fridge: fc.integer({ min: 1, max: 3 }),
    }),
    taken: fc.array(
      fc
        .record({ use: use(["person", "stand"]), at: fc.nat(5), long: fc.nat(3) })
        .map(({ use: { resource, amount }, at, long }) => ({
          resource,
          amount,
          from: now + at * SLOT,
          to: now + (at + long) * SLOT,
        })),
      { maxLength: 1 },
    ),
  });
