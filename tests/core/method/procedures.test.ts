import { expect, test } from "vitest";
import { OUTCOMES, procedureSchema, stepAfter, stepOf } from "../../../core/method/procedure.ts";
import { PROCEDURES, procedureFor } from "../../../core/method/procedures.ts";
import { WASHED_SPEC } from "../../support/world/run-events.ts";

const ASKED = {
  look: ["clear", "hazy", "cloudy"],
  taste: ["right", "too-far"],
  rescue: ["finer-filter", "cold-rest", "accept"],
} as const;

test("ten procedures are shipped, each by a name of its own, each sound", () => {
  expect(PROCEDURES.map(({ id }) => id)).toEqual([
    "dairy-wash",
    "long-infusion",
    "short-infusion",
    "fat-wash",
    "sherbet",
    "cordial",
    "acid-juice",
    "syrup",
    "saline",
    "freezer-bottle",
  ]);
  for (const one of PROCEDURES) expect(procedureSchema.safeParse(one).success, one.id).toBe(true);
});

test.each(PROCEDURES)("$id: whatever is answered, its end is in reach of every step", (one) => {
  const reach = (from: string, round: number, seen: ReadonlySet<string>): boolean => {
    const { asks } = stepOf(one, from);
    const answers = asks === undefined ? [undefined] : ASKED[asks];
    return answers.some((answer) => {
      const next = stepAfter(one, from, answer, round)?.id;
      if (next === undefined) return true;
      return !seen.has(next) && reach(next, round, new Set([...seen, next]));
    });
  };
  for (const { id } of one.steps) expect(reach(id, 1, new Set([id])), id).toBe(true);
});

test.each(PROCEDURES)("$id: every bottle is counted and labelled", ({ steps }) => {
  const works = steps.map(({ work }) => work);
  expect(works).toContain("bottle");
  expect(works.indexOf("label")).toBeGreaterThan(works.indexOf("bottle"));
});

test("an outcome that nobody branches on goes to the next step", () => {
  const syrup = PROCEDURES.find(({ id }) => id === "syrup");
  if (syrup === undefined) throw new RangeError("there must be a syrup");
  for (const on of OUTCOMES) expect(stepAfter(syrup, "stir", on)?.id).toBe("brix");
});

test("a washed spec is a dairy wash, an unwashed one goes into the freezer, unless it says", () => {
  const { wash: _, ...unwashed } = WASHED_SPEC;
  expect(procedureFor(WASHED_SPEC, [])?.id).toBe("dairy-wash");
  expect(procedureFor(unwashed, [])?.id).toBe("freezer-bottle");
  const infused = { ...unwashed, procedure: { id: "long-infusion", times: {} } };
  expect(procedureFor(infused, [])?.id).toBe("long-infusion");
  expect(procedureFor({ ...unwashed, procedure: { id: "gone", times: {} } }, [])).toBeUndefined();
});

test("a spec's own times replace the procedure's, and only where something is waited for", () => {
  const times = { curdle: 7_200_000, pour: 5000, __proto__: 1000 };
  const own = procedureFor({ ...WASHED_SPEC, procedure: { id: "dairy-wash", times } }, []);
  expect(own?.steps.find(({ id }) => id === "curdle")?.waitFor).toBe(7_200_000);
  expect(own?.steps.find(({ id }) => id === "pour")?.waitFor).toBeUndefined();
  expect(own?.steps.find(({ id }) => id === "first-pass")?.waitFor).toBe(60_000);
});

test("the house's own procedure comes before the shipped one of the same id", () => {
  const [shipped] = PROCEDURES;
  if (shipped === undefined) throw new RangeError("there must be a procedure");
  const mine = { ...shipped, version: 7 };
  expect(procedureFor(WASHED_SPEC, [mine])?.version).toBe(7);
});
