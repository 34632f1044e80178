import { expect, test } from "vitest";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { type PlanRefusal, planBatch } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import {
  cupboardWith,
  dryOf,
  fromCupboard,
  lineOf,
  PUNCH,
  unwashed,
} from "../../support/world/punch-spec.ts";

const LITRES_5: BatchSize = { by: "volume", volume: 5000 };
const cupboard = cupboardWith();

interface Bad {
  readonly spec?: Partial<Spec>;
  readonly size?: BatchSize;
  readonly about?: readonly string[];
  readonly cupboard?: ReturnType<typeof cupboardWith>;
}

const leaves = dryOf("leaves", { absorbs: 20 });
const liqueur = fromCupboard("cream", { id: "cream-liqueur", strength: 0.17 });
const impossible = fromCupboard("lemon-juice", {
  strength: 0.9,
  sweetness: { as: "g/L", value: 900 },
});
const overfull = dryOf("white-sugar", { sweetness: { as: "g/L", value: 1200 } });
const wash = PUNCH.wash ?? { dairyId: "", ratio: 1, order: "punch-into-milk", filters: 1 };
const half = PUNCH.lines.map((line) => ({ ...line, heldBack: 0 }));

/** Every refusal there is, each with specs that come to it and what its sentence needs. */
const BAD: Readonly<Record<PlanRefusal, readonly Bad[]>> = {
  "spec-without-lines": [{ spec: { lines: [] } }],
  "spec-ingredient-missing": [{ spec: { lines: [lineOf("gone", 10)] }, about: ["id"] }],
  "ingredient-impossible": [
    { cupboard: cupboardWith(impossible), about: ["name"] },
    {
      spec: { lines: [...PUNCH.lines, lineOf("white-sugar", 5, "g")] },
      cupboard: cupboardWith(overfull),
      about: ["name"],
    },
  ],
  "dry-needs-weight": [
    { spec: { lines: [...PUNCH.lines, lineOf("white-sugar", 5, "ml")] }, about: ["name"] },
  ],
  "botanicals-keep-all": [
    // To the last drop but for rounding: no size of batch makes a drink of that.
    {
      spec: { lines: [lineOf("vodka-40", 0.5), lineOf("leaves", 0.5, "g")] },
      cupboard: cupboardWith(dryOf("leaves", { absorbs: 1 })),
      about: ["kept", "volume"],
    },
    {
      spec: { lines: [lineOf("water", 10), lineOf("leaves", 5, "g")] },
      cupboard: cupboardWith(leaves),
    },
  ],
  "wash-dairy-missing": [{ spec: { wash: { ...wash, dairyId: "gone" } }, about: ["id"] }],
  "wash-dairy-not-dairy": [
    { spec: { wash: { ...wash, dairyId: "water" } }, about: ["name"] },
    {
      spec: { wash: { ...wash, dairyId: "cream-liqueur" } },
      cupboard: cupboardWith(liqueur),
      about: ["name"],
    },
  ],
  "nothing-to-wash": [{ spec: { lines: [lineOf("brandy-40", 40, "ml", 1)] } }],
  "nothing-held-back": [{ spec: { lines: half, topUp: { rule: "strength", target: 0.2 } } }],
  "target-above-spirit": [
    { spec: { topUp: { rule: "strength", target: 0.4 } }, about: ["target", "nearest"] },
    { spec: { topUp: { rule: "strength", target: 0.99 } }, about: ["target", "nearest"] },
  ],
  "target-below-base": [
    { spec: { topUp: { rule: "strength", target: 0.01 } }, about: ["target", "nearest"] },
  ],
  "size-too-small": [
    { size: { by: "volume", volume: 0 } },
    { size: { by: "volume", volume: Number.NaN } },
    { size: { by: "serves", serves: -1 } },
    // Fifty filters drink up a litre: a bottle of nothing but what was held back is no wash.
    {
      spec: { lines: [lineOf("brandy-40", 40, "ml", 0.8)], wash: { ...wash, filters: 50 } },
      size: { by: "volume", volume: 90 },
    },
  ],
  "spec-holds-nothing": [{ spec: { ...unwashed(), lines: [lineOf("leaves", 5, "g")] } }],
  "stock-unused": [
    { size: { by: "stock", ingredientId: "gin-43", amount: { value: 700, unit: "ml" } } },
  ],
};

test.each(
  Object.entries(BAD).flatMap(([refusal, cases]) => cases.map((bad) => [refusal, bad] as const)),
)("%s", (refusal, { spec = {}, size = LITRES_5, about = [], cupboard: shelf }) => {
  const { wash: _, ...bare } = PUNCH;
  const whole = "wash" in spec || refusal !== "spec-holds-nothing" ? PUNCH : bare;
  const stocked = shelf ?? cupboardWith(dryOf("leaves"));
  const result = planBatch({ ...whole, ...spec }, stocked, size, NEW_HOUSE);
  expect(result).toMatchObject({ ok: false, refusal });
  if (!result.ok) expect(Object.keys(result.about)).toEqual(expect.arrayContaining([...about]));
});

test("an endless size is our own mistake", () => {
  const size = { by: "volume", volume: Number.POSITIVE_INFINITY } as const;
  expect(() => planBatch(PUNCH, cupboard, size, NEW_HOUSE)).toThrow(RangeError);
});
