import { expect, test } from "vitest";
import type { ProcedureDraft } from "../../../app/procedure-drafts.ts";
import {
  askAtText,
  nameOfStep,
  readDraft,
  timeText,
} from "../../../app/screens/procedure/draft.ts";
import { procedure as words } from "../../../app/words/en/procedures.ts";
import { addStep, changeStep, copyProcedure } from "../../../core/method/edit-procedure.ts";
import { LONG_INFUSION } from "../../../core/method/infusions.ts";
import { type Procedure, procedureSchema, stepOf } from "../../../core/method/procedure.ts";
import { PROCEDURES } from "../../../core/method/procedures.ts";

const HOUR = 3_600_000;
const own = copyProcedure(LONG_INFUSION, "own", "Slow barley");
const draft = (texts: ProcedureDraft["texts"], procedure: Procedure = own): ProcedureDraft => ({
  procedure,
  texts,
});

test.each(PROCEDURES)("$id goes through the form unchanged but for its version", (shipped) => {
  const copy = copyProcedure(shipped, "own", "Own");
  const read = readDraft(draft({}, copy), 4);
  expect([...read.faults]).toEqual([]);
  expect(read.procedure).toEqual({ ...copy, version: 4 });
  expect(procedureSchema.safeParse(read.procedure).success).toBe(true);
});

test("times are read as they are typed, and an emptied one goes", () => {
  const { procedure } = readDraft(
    draft({
      "steep/waitFor": "10 h",
      "steep/askAt": "20 h; 1 day 2 h",
      "steep/askEvery": " ",
      "steep/longestFor": "1 1/2 days",
      "strain-mesh/handsFor": "20 min",
    }),
    2,
  );
  expect(procedure && stepOf(procedure, "steep")).toEqual({
    id: "steep",
    kind: "watched-wait",
    work: "steep",
    asks: "taste",
    branches: [],
    stands: "counter",
    waitFor: 10 * HOUR,
    askAt: [20 * HOUR, 26 * HOUR],
    longestFor: 36 * HOUR,
  });
  expect(procedure && stepOf(procedure, "strain-mesh").handsFor).toBe(20 * 60_000);
});

test("what a field shows is what was typed, else the procedure's own", () => {
  const steep = stepOf(own, "steep");
  expect(timeText(draft({}), steep, "waitFor")).toBe("12 h");
  expect(askAtText(draft({}), steep)).toBe("24 h, 30 h");
  const typed = draft({ "steep/waitFor": "ten", "steep/askAt": "" });
  expect(timeText(typed, steep, "waitFor")).toBe("ten");
  expect(askAtText(typed, steep)).toBe("");
});

test.each<[string, ProcedureDraft, string, string]>([
  ["a time of no unit", draft({ "steep/waitFor": "12" }), "steep/waitFor", words.timeFault],
  [
    "one of several times",
    draft({ "steep/askAt": "24 h, later" }),
    "steep/askAt",
    words.timesFault,
  ],
  [
    "asks that do not rise",
    draft({ "steep/askAt": "30 h, 24 h" }),
    "steep/askAt",
    words.faults["asks-out-of-order"],
  ],
  [
    "a stop before the last ask",
    draft({ "steep/longestFor": "26 h" }),
    "steep/longestFor",
    words.faults["stop-before-ask"],
  ],
  [
    "no time at all",
    draft({ "steep/waitFor": "" }),
    "steep/waitFor",
    words.faults["wait-without-time"],
  ],
  ["no name", draft({}, { ...own, name: " " }), "name", words.faults["no-name"]],
  [
    "a new step that is not named",
    draft({}, addStep(own, 2, "by-hand").procedure),
    "own-8/title",
    words.faults["no-title"],
  ],
])("%s gets one sentence, at its own field", (_, typed, key, says) => {
  const { procedure, faults } = readDraft(typed, 1);
  expect(procedure).toBeUndefined();
  expect([...faults]).toEqual([[key, says]]);
});

test("a loop is told at each of its steps, and what is cut off by it at its own", () => {
  const { faults } = readDraft(draft({}, changeStep(own, "strain-paper", { next: "steep" })), 1);
  expect(faults.get("strain-paper/")).toBe(words.faults.endless);
  expect(faults.get("bottle/")).toBe(words.faults.unreachable);
});

test("a step is called by its own title, else by the catalogue's word, else it says that it is new", () => {
  expect(nameOfStep({ ...stepOf(own, "steep"), title: "Sit" })).toBe("Sit");
  expect(nameOfStep(stepOf(own, "steep"))).toBe("Steep");
  const { procedure, id } = addStep(own, 0, "timed");
  expect(nameOfStep(stepOf(procedure, id))).toBe(words.newTitle);
});
