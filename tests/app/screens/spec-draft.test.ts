import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { chosenProcedure, misfitOf, proceduresFor } from "../../../app/procedure-book.ts";
import {
  BLANK,
  draftOf,
  dropDraft,
  keepDraft,
  keptDraft,
  type SpecDraft,
  sameDraft,
} from "../../../app/screens/spec/draft.ts";
import { readDraft, readRatio } from "../../../app/screens/spec/read-draft.ts";
import { ownProcedures } from "../../../app/state.ts";
import { sayLater } from "../../../app/words/say-later.ts";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { copyProcedure } from "../../../core/method/edit-procedure.ts";
import { LONG_INFUSION } from "../../../core/method/infusions.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { specSchema } from "../../../core/spec/spec.ts";
import { DEMO_SPECS } from "../../support/world/demo-bar.ts";

const cupboard = new Map(CUPBOARD.map((one) => [one.id, one]));
const PEAR = DEMO_SPECS[0];
if (PEAR === undefined) throw new RangeError("expected a demo spec, got none");

const read = (draft: SpecDraft) => readDraft(draft, { id: "a", version: 1 }, cupboard, "bar");
const with_ = (change: Partial<SpecDraft>): SpecDraft => ({ ...draftOf(PEAR), ...change });

test.each(DEMO_SPECS)("$name goes through the form unchanged", (spec) => {
  const { id, version, demo } = spec;
  const again = readDraft(draftOf(spec), { id, version, demo }, cupboard, "bar");
  expect([...again.faults]).toEqual([]);
  expect(again.spec).toEqual(spec);
  expect(specSchema.safeParse(again.spec).success).toBe(true);
});

// Each row: a field, rubbish in it, the key of its fault.
const RUBBISH: readonly [Partial<SpecDraft>, string][] = [
  [{ name: "  " }, "name"],
  [{ ratio: "lots" }, "ratio"],
  [{ ratio: "1 : 100" }, "ratio"],
  [{ filters: "2.5" }, "filters"],
  [{ filters: "0" }, "filters"],
  [{ rule: "strength", target: "" }, "target"],
  [{ rule: "strength", target: "100" }, "target"],
  [{ pour: "3 kg" }, "pour"],
  [{ pour: "0" }, "pour"],
  [{ pour: "3 l" }, "pour"],
  [{ dilution: "-4" }, "dilution"],
  [{ dilution: "some" }, "dilution"],
  [{ price: "0" }, "price"],
  [{ price: "dear" }, "price"],
  [{ keepDays: "0" }, "keepDays"],
  [{ keepDays: "1.5" }, "keepDays"],
  [{ keepDays: "" }, "keepDays"],
  [{ dairyId: "gin-43" }, "dairy"],
  [{ adding: "45 ml gin" }, "adding"],
  [{ lines: [] }, "adding"],
];

test.each(RUBBISH)("%j gets one sentence, at its own field", (change, key) => {
  const { spec, faults } = read(with_(change));
  expect(spec).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
  expect(faults.get(key)).toMatch(/^[A-Z“].+[.]$/u);
});

test.each([
  ["amount", "45", "has no unit"],
  ["amount", "45 ml lemon", "lemon"],
  ["amount", "abc", "does not start with a number"],
  ["held", "140", "from 0 to 100 %"],
  ["held", "half", "from 0 to 100 %"],
])("a line's %s of %j says what to do", (field, typed, says) => {
  const lines = draftOf(PEAR).lines.map((one, at) => (at === 0 ? { ...one, [field]: typed } : one));
  const { faults } = read(with_({ lines }));
  expect(faults.get(`${field}:eau-de-vie`)).toContain(says);
  expect(faults.size).toBe(1);
});

test("what must be weighed cannot be poured", () => {
  const line = { id: "sugar", ingredientId: "white-sugar", amount: "30 ml", held: "" };
  const { faults } = read(with_({ lines: [line] }));
  expect(faults.get("amount:sugar")).toContain("weighed");
});

test("a wash that is not wanted asks for nothing, and keeps its rule for later", () => {
  const { spec } = read(with_({ washed: false, ratio: "lots", rule: "strength", target: "20" }));
  expect(spec?.wash).toBeUndefined();
  expect(spec?.topUp).toEqual({ rule: "strength", target: 0.2 });
  const unread = read(with_({ washed: false, rule: "strength", target: "x" }));
  expect(unread.spec?.topUp).toEqual({ rule: "proportion" });
});

test.each([
  ["1 : 4", 0.25],
  ["1:4", 0.25],
  ["1/4", 0.25],
  ["0,25", 0.25],
  ["25 %", 0.25],
  ["250 ml", 0.25],
  ["3 : 10", 0.3],
  ["1", 1],
  ["2 : 1", 2],
])("milk %s is %s per punch", (text, ratio) => {
  expect(readRatio(text)).toBeCloseTo(ratio, 12);
});

test.each(["", "lots", "1 :", ": 4", "1 : 0", "0.01", "3", "250 g", "1 : 4 : 2"])(
  "milk %j is no proportion",
  (text) => {
    expect(readRatio(text)).toBeUndefined();
  },
);

test("dilution and menu price are left out unless they were typed", () => {
  const { spec } = read(with_({ dilution: "22 %", price: "14,50" }));
  expect(spec?.serve).toMatchObject({ dilution: 0.22, price: 14.5 });
  expect(Object.keys(read(with_({})).spec?.serve ?? {})).not.toContain("price");
});

test("a pour may be typed in the house's ounce", () => {
  expect(read(with_({ pour: "3 oz" })).spec?.serve.pour).toBe(90);
  const exact = readDraft(with_({ pour: "3 oz" }), { id: "a", version: 1 }, cupboard, "exact");
  expect(exact.spec?.serve.pour).toBeCloseTo(88.72, 2);
});

beforeEach(() => dropDraft("a"));

test("a draft stays until it is dropped, apart from others", () => {
  keepDraft("a", { ...BLANK, name: "kept" });
  expect(keptDraft("a")?.name).toBe("kept");
  expect(keptDraft("b")).toBeUndefined();
  dropDraft("a");
  expect(keptDraft("a")).toBeUndefined();
});

test("an errand to the cupboard is no change of the spec", () => {
  expect(sameDraft(BLANK, { ...BLANK, awaiting: "x" })).toBe(true);
  expect(sameDraft(BLANK, { ...BLANK, notes: "x" })).toBe(false);
});

const slowBarley = copyProcedure(LONG_INFUSION, "own-infusion", "Slow barley");
const slowWash = copyProcedure(DAIRY_WASH, "own-wash", "Slow wash");

describe("with procedures of the house's own", () => {
  beforeEach(() => {
    ownProcedures.value = [slowBarley, slowWash];
  });
  afterEach(() => {
    ownProcedures.value = [];
  });

  test("a spec is made by one, with its own times; a washed one only by one that pours milk", () => {
    const times = { steep: "10 h" };
    const infused = read(with_({ washed: false, procedureId: "own-infusion", times })).spec;
    expect(infused?.procedure).toEqual({ id: "own-infusion", times: { steep: 36_000_000 } });
    const washed = read(with_({ procedureId: "own-wash" })).spec;
    expect(washed?.procedure).toEqual({ id: "own-wash", times: {} });
    expect(proceduresFor(true).map(({ id }) => id)).toEqual(["own-wash", "dairy-wash"]);
    expect(proceduresFor(false).map(({ id }) => id)).not.toContain("own-wash");
  });

  test("one of the other kind gives way to the usual one; it is not gone", () => {
    expect(misfitOf(true, "own-infusion")).toBe("other-kind");
    expect(read(with_({ procedureId: "own-infusion" })).spec?.procedure).toBeUndefined();
    expect(read(with_({ washed: false, procedureId: "own-wash" })).spec?.procedure).toBeUndefined();
  });
});

test.each([true, false])(
  "one that is gone is said, and never quietly replaced (washed: %s)",
  (washed) => {
    const { spec, faults } = read(with_({ washed, procedureId: "own-wash" }));
    expect(spec).toBeUndefined();
    expect([...faults]).toEqual([["procedure", sayLater.spec.making.gone]]);
    expect(chosenProcedure(washed, "own-wash")).toBeUndefined();
  },
);
