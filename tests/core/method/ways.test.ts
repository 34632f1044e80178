import fc from "fast-check";
import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import type { Procedure, Step } from "../../../core/method/procedure.ts";
import { PROCEDURES } from "../../../core/method/procedures.ts";
import { handsOn } from "../../../core/method/steps.ts";
import { astray, comesWithout } from "../../../core/method/ways.ts";
import { everyWalk } from "../../support/world/every-walk.ts";

const made = (...steps: readonly Step[]): Procedure => ({
  id: "own",
  version: 1,
  steps: [...steps],
});
const look = (id: string, branches: Step["branches"], rest: Partial<Step> = {}): Step => ({
  ...handsOn(id, "other"),
  asks: "look",
  branches,
  ...rest,
});

test.each(PROCEDURES)("$id: nothing goes astray", (procedure) => {
  expect(astray(procedure)).toEqual({ unreachable: [], endless: [] });
});

test("two steps that name each other: no way out, and nothing after them is come to", () => {
  const loop = made(
    handsOn("a", "other"),
    handsOn("b", "other", { next: "a" }),
    handsOn("c", "other"),
  );
  expect(astray(loop)).toEqual({ unreachable: ["c"], endless: ["a", "b"] });
});

test("a way out that closes after some rounds is none: whoever comes late is shut in", () => {
  const shut = made(
    handsOn("pour", "other"),
    look("look", [
      { on: "cloudy", to: "pour" },
      { on: "hazy", to: "pour" },
      { on: "clear", to: "end" },
      { on: "clear", to: "pour", fromRound: 3 },
    ]),
    handsOn("end", "other"),
  );
  expect(astray(shut).endless).toEqual(["pour", "look"]);
  expect(astray(shut).unreachable).toEqual([]);
});

test("a way out that opens only after some rounds is one: somebody gives up", () => {
  const opens = made(
    look("look", [
      { on: "cloudy", to: "look" },
      { on: "hazy", to: "look" },
      { on: "clear", to: "look" },
      { on: "cloudy", to: "end", fromRound: 3 },
    ]),
    handsOn("end", "other"),
  );
  expect(astray(opens)).toEqual({ unreachable: [], endless: [] });
});

test("a second round that never comes leads nowhere", () => {
  const once = made(
    look("look", [{ on: "cloudy", to: "rescue", fromRound: 2 }], { next: "end" }),
    handsOn("rescue", "other"),
    handsOn("end", "other"),
  );
  expect(astray(once).unreachable).toEqual(["rescue"]);
});

test("what may be passed by is found: a way round the yield", () => {
  const measured = ({ needs }: Step): boolean => needs === "yield";
  expect(comesWithout(DAIRY_WASH, "top-up", measured)).toBe(false);
  const round = made(
    ...DAIRY_WASH.steps.map((step) => (step.id === "rack" ? { ...step, next: "top-up" } : step)),
  );
  expect(comesWithout(round, "top-up", measured)).toBe(true);
});

const ids = ["a", "b", "c"] as const;
const anyStep = (id: string): fc.Arbitrary<Step> =>
  fc
    .record({
      asks: fc.boolean(),
      next: fc.option(fc.constantFrom(...ids), { nil: undefined }),
      branches: fc.array(
        fc.record({
          on: fc.constantFrom("clear" as const, "hazy" as const, "cloudy" as const),
          to: fc.constantFrom(...ids),
          fromRound: fc.constantFrom(1, 1, 2, 3),
        }),
        { maxLength: 4 },
      ),
    })
    .map(({ asks, next, branches }) => ({
      ...handsOn(id, "other"),
      ...(next === undefined ? {} : { next }),
      ...(asks ? { asks: "look" as const, branches } : {}),
    }));

test("against every answer tried: where nothing goes astray nobody is ever shut in", () => {
  let sound = 0;
  let shut = 0;
  fc.assert(
    fc.property(fc.tuple(...ids.map(anyStep)), (steps) => {
      const procedure = made(...steps);
      const { unreachable, endless } = astray(procedure);
      const { stood, shutIn } = everyWalk(procedure);
      if (endless.length === 0) expect(shutIn).toBe(false);
      // What nobody can come to by any way is never stood at.
      for (const id of unreachable) expect(stood.has(id)).toBe(false);
      if (shutIn) shut += 1;
      else if (endless.length === 0) sound += 1;
    }),
    { numRuns: 1000 },
  );
  expect(sound).toBeGreaterThan(50);
  expect(shut).toBeGreaterThan(100);
});
