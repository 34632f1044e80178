import fc from "fast-check";
import { expect, test } from "vitest";
import { checkProcedure } from "../../../core/method/check-procedure.ts";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import {
  addStep,
  changeStep,
  copyProcedure,
  moveStep,
  type NewStep,
  removeStep,
} from "../../../core/method/edit-procedure.ts";
import { LONG_INFUSION } from "../../../core/method/infusions.ts";
import { type Procedure, procedureSchema } from "../../../core/method/procedure.ts";
import { PROCEDURES } from "../../../core/method/procedures.ts";
import { usuallyAfter, usualPath } from "../../../core/method/usual-path.ts";
import { everyWalk } from "../../support/world/every-walk.ts";

const idsOf = ({ steps }: Procedure): readonly string[] => steps.map(({ id }) => id);
const own = copyProcedure(LONG_INFUSION, "own", "Slow barley");

test("a copy has a name, an id and a first version of its own; the shipped one is as it was", () => {
  expect(own).toMatchObject({ id: "own", name: "Slow barley", version: 1 });
  expect(own.steps).toEqual(LONG_INFUSION.steps);
  expect(LONG_INFUSION.name).toBeUndefined();
});

test.each<NewStep>(["by-hand", "timed", "look", "taste", "reading"])(
  "a new step (%s) comes where it was put, under an id of its own, and reads back",
  (what) => {
    const { procedure, id } = addStep(own, 2, what);
    expect(procedure.steps[2]?.id).toBe(id);
    expect(idsOf(own)).not.toContain(id);
    const again = addStep(procedure, 0, what);
    expect(again.id).not.toBe(id);
    expect(procedureSchema.safeParse(again.procedure).success).toBe(true);
  },
);

const without = (procedure: Procedure, id: string): Procedure => {
  const removed = removeStep(procedure, id);
  if (!removed.ok) throw new RangeError(removed.refusal);
  return removed.value;
};
const stepIn = ({ steps }: Procedure, id: string) => steps.find((step) => step.id === id);
const wash = copyProcedure(DAIRY_WASH, "own", "Own wash");

test("a step goes a place up or down, to the first and the last, and no further", () => {
  const [first = "", second = "", ...rest] = idsOf(own);
  const last = rest.at(-1) ?? "";
  expect(idsOf(moveStep(own, second, -1))).toEqual([second, first, ...rest]);
  expect(idsOf(moveStep(own, first, 1))).toEqual([second, first, ...rest]);
  expect(idsOf(moveStep(own, rest.at(-2) ?? "", 1)).slice(-2)).toEqual([last, rest.at(-2)]);
  expect(moveStep(own, first, -1)).toBe(own);
  expect(moveStep(own, last, 1)).toBe(own);
  expect(moveStep(own, "none", 1)).toBe(own);
});

test("a removed step leaves no way into nowhere: what led to it leads on", () => {
  const less = without(wash, "re-pour");
  expect(idsOf(less)).not.toContain("re-pour");
  expect(stepIn(less, "finer")?.next).toBe("check-clear");
  const looks = stepIn(less, "check-clear")?.branches ?? [];
  expect(looks.filter(({ to }) => to === "check-clear")).toHaveLength(2);
  expect(procedureSchema.safeParse(less).success).toBe(true);
});

test("what led to a removed step goes where that step went, not to what stands below it", () => {
  // The usual way on from a look is that it is clear; the rescue stands below it in the list.
  const unlooked = without(wash, "check-clear");
  expect(stepIn(unlooked, "re-pour")?.next).toBe("slow-drip");
  const rescue = stepIn(without(wash, "finer"), "rescue")?.branches ?? [];
  expect(rescue.find(({ on }) => on === "finer-filter")?.to).toBe("re-pour");
  expect(stepIn(without(wash, "rack"), "cold-rest")?.next).toBe("yield");
  // In a plain list nothing has to be said.
  expect(without(own, "strain-mesh").steps.some(({ next }) => next !== undefined)).toBe(false);
});

test("the last step stays while a step further up leads straight to it", () => {
  const straight = changeStep(own, "steep", { branches: [{ on: "too-far", to: "label" }] });
  expect(removeStep(straight, "label")).toEqual({
    ok: false,
    refusal: "step-is-led-to",
    about: { by: "steep" },
  });
  // From the step before it the list ends there all the same.
  const beside = without(changeStep(own, "bottle", { next: "label" }), "label");
  expect(beside.steps.at(-1)).toEqual(stepIn(own, "bottle"));
});

test("the perishable moment moves on with its step, and goes with the last", () => {
  expect(without(DAIRY_WASH, "milk").perishableFrom).toBe("pour");
  const last = { ...own, perishableFrom: "label" };
  expect("perishableFrom" in without(last, "label")).toBe(false);
});

test("steps move by one place and stop at the ends", () => {
  expect(idsOf(moveStep(own, "strain-paper", -1)).slice(2, 4)).toEqual([
    "strain-paper",
    "strain-mesh",
  ]);
  expect(moveStep(own, "build", -1)).toBe(own);
  expect(moveStep(own, "label", 1)).toBe(own);
  expect(moveStep(own, "no-such-step", 1)).toBe(own);
});

test("a change touches its own step and nothing else; undefined takes something away", () => {
  const longer = changeStep(own, "steep", { waitFor: 20 * 3_600_000, askAt: undefined });
  const steep = longer.steps.find(({ id }) => id === "steep");
  expect(steep?.waitFor).toBe(20 * 3_600_000);
  expect(steep !== undefined && "askAt" in steep).toBe(false);
  expect(longer.steps.filter(({ id }) => id !== "steep")).toEqual(
    own.steps.filter(({ id }) => id !== "steep"),
  );
});

test("the only step of a procedure is not removed", () => {
  const one = { ...own, steps: own.steps.slice(0, 1) };
  expect(removeStep(one, "build")).toEqual({ ok: false, refusal: "only-step", about: {} });
  expect(removeStep(one, "no-such-step")).toEqual({ ok: true, value: one });
});

const keptIfRefused = (procedure: Procedure, id: string): Procedure => {
  const removed = removeStep(procedure, id);
  return removed.ok ? removed.value : procedure;
};

type Edit = (procedure: Procedure) => Procedure;

/** Any edit of the step at a place, by a number that says which. */
const anyEdit: fc.Arbitrary<Edit> = fc
  .tuple(fc.nat(20), fc.constantFrom("add", "remove", "up", "down", "time", "next"), fc.nat(4))
  .map(([place, what, which]) => (procedure: Procedure) => {
    const { steps } = procedure;
    const id = steps[place % steps.length]?.id ?? "";
    const kinds = ["by-hand", "timed", "look", "taste", "reading"] as const;
    switch (what) {
      case "add":
        return addStep(procedure, place % steps.length, kinds[which] ?? "timed").procedure;
      case "remove":
        return keptIfRefused(procedure, id);
      case "up":
        return moveStep(procedure, id, -1);
      case "down":
        return moveStep(procedure, id, 1);
      case "time":
        return changeStep(procedure, id, { waitFor: (which + 1) * 60_000 });
      default:
        return changeStep(procedure, id, { next: steps[which % steps.length]?.id });
    }
  });

test("whatever is edited: what has no fault reads back, ends, and is come to step by step", () => {
  let sound = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...PROCEDURES),
      fc.array(anyEdit, { maxLength: 8 }),
      (start, edits) => {
        const edited = edits.reduce((so, edit) => edit(so), copyProcedure(start, "own", "Own"));
        expect(procedureSchema.safeParse(edited).success).toBe(true);
        if (checkProcedure(edited, () => true).faults.length > 0) return;
        sound += 1;
        const last = usualPath(edited).at(-1);
        expect(last).toBeDefined();
        expect(last && usuallyAfter(edited, last)).toBeUndefined();
        const { stood, shutIn } = everyWalk(edited);
        expect(shutIn).toBe(false);
        expect([...stood].sort()).toEqual(idsOf(edited).toSorted());
      },
    ),
    { numRuns: 2000 },
  );
  expect(sound).toBeGreaterThan(200);
});
