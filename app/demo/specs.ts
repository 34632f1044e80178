import type { Spec, SpecLine } from "../../core/spec/spec.ts";
import type { DemoSpecId, DemoWords } from "./written.ts";

// The demo world is invented: none of these amounts is a check value.

/** A drink of the demo without a word in it. */
interface Bare extends Omit<Spec, "name" | "notes" | "serve" | "version" | "demo"> {
  readonly id: DemoSpecId;
  readonly serve: Omit<Spec["serve"], "glass" | "garnish">;
}

const line = (
  id: string,
  ingredientId: string,
  value: number,
  unit: SpecLine["amount"]["unit"],
  heldBack = 0,
): SpecLine => ({ id, ingredientId, amount: { value, unit }, heldBack });

const PEAR_BEACON: Bare = {
  id: "demo-pear-beacon",
  lines: [
    line("eau-de-vie", "pear-eau-de-vie-42", 30, "ml", 0.4),
    line("rum", "pot-still-rum-57", 10, "ml"),
    line("lemon", "lemon-juice", 15, "ml"),
    line("oolong", "oolong-tea", 25, "ml"),
    line("ginger", "ginger-syrup-2-1", 15, "ml"),
    line("allspice", "allspice-liqueur-22", 5, "ml"),
  ],
  wash: { dairyId: "milk-whole", ratio: 0.25, order: "punch-into-milk", filters: 2 },
  topUp: { rule: "proportion" },
  serve: { pour: 85, method: "stirred" },
  keepDays: 7,
};

const BOATYARD: Bare = {
  id: "demo-boatyard-flip-side",
  lines: [
    line("gin", "gin-43", 45, "ml", 0.2),
    line("grapefruit", "grapefruit-juice", 20, "ml"),
    line("citric", "citric-acid", 0.3, "g"),
    line("honey", "honey-syrup-1-1", 12, "ml"),
    line("vermouth", "dry-vermouth-18", 20, "ml"),
  ],
  wash: { dairyId: "milk-whole", ratio: 0.25, order: "punch-into-milk", filters: 2 },
  topUp: { rule: "strength", target: 0.2 },
  serve: { pour: 90, method: "stirred" },
  keepDays: 7,
};

const HARBOUR_SLUSH: Bare = {
  id: "demo-harbour-slush",
  lines: PEAR_BEACON.lines.map((one) => ({ ...one, heldBack: 0 })),
  topUp: { rule: "fixed" },
  serve: { pour: 100, method: "blended" },
  keepDays: 3,
};

const plain = (
  id: DemoSpecId,
  procedure: string,
  lines: Spec["lines"],
  keepDays: number,
): Bare => ({
  id,
  lines,
  topUp: { rule: "fixed" },
  procedure: { id: procedure, times: {} },
  serve: { pour: 50, method: "straight" },
  keepDays,
});

const SMOKED_BARLEY = plain(
  "demo-smoked-barley",
  "long-infusion",
  [line("whisky", "blended-whisky-40", 700, "ml"), line("barley", "roasted-barley", 70, "g")],
  30,
);

const BROWN_BUTTER = plain(
  "demo-brown-butter-rye",
  "fat-wash",
  [line("rye", "rye-50", 700, "ml"), line("butter", "brown-butter", 90, "g")],
  14,
);

const CHAMOMILE = plain(
  "demo-chamomile-dry-vermouth",
  "short-infusion",
  [line("vermouth", "dry-vermouth-18", 750, "ml"), line("chamomile", "chamomile", 6, "g")],
  14,
);

const SHERBET = plain(
  "demo-citrus-skin-sherbet",
  "sherbet",
  [
    line("skins", "citrus-skins", 100, "g"),
    line("sugar", "white-sugar", 400, "g"),
    line("juice", "lemon-juice", 400, "ml"),
  ],
  7,
);

const BARE: readonly Bare[] = [
  PEAR_BEACON,
  BOATYARD,
  SMOKED_BARLEY,
  BROWN_BUTTER,
  CHAMOMILE,
  SHERBET,
  HARBOUR_SLUSH,
];

/** What the demo specs are called in storage, whatever language they are in. */
export const DEMO_SPEC_IDS: readonly string[] = BARE.map(({ id }) => id);

/** The demo specs of The Salt Loft, an invented bar, in the words of one language. */
export const demoSpecs = ({ specs }: DemoWords): readonly Spec[] =>
  BARE.map(({ serve, ...bare }) => {
    const { glass, garnish, ...told } = specs[bare.id];
    return { ...bare, ...told, version: 1, serve: { ...serve, glass, garnish }, demo: true };
  });
