import type { Spec, SpecLine } from "../../core/spec/spec.ts";

// The demo world is invented: none of these amounts is a check value.

const line = (
  id: string,
  ingredientId: string,
  value: number,
  unit: SpecLine["amount"]["unit"],
  heldBack = 0,
): SpecLine => ({ id, ingredientId, amount: { value, unit }, heldBack });

const PEAR_BEACON: Spec = {
  id: "demo-pear-beacon",
  name: "Pear Beacon",
  version: 1,
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
  serve: { pour: 85, method: "stirred", glass: "Small rocks glass", garnish: "Thin slice of pear" },
  keepDays: 7,
  notes: "Brew the oolong at double strength and cool it before it meets the lemon.",
  demo: true,
};

const BOATYARD: Spec = {
  id: "demo-boatyard-flip-side",
  name: "Boatyard Flip-Side",
  version: 1,
  lines: [
    line("gin", "gin-43", 45, "ml", 0.2),
    line("grapefruit", "grapefruit-juice", 20, "ml"),
    line("citric", "citric-acid", 0.3, "g"),
    line("honey", "honey-syrup-1-1", 12, "ml"),
    line("vermouth", "dry-vermouth-18", 20, "ml"),
  ],
  wash: { dairyId: "milk-whole", ratio: 0.25, order: "punch-into-milk", filters: 2 },
  topUp: { rule: "strength", target: 0.2 },
  serve: { pour: 90, method: "stirred", glass: "Coupe", garnish: "Grapefruit peel, expressed" },
  keepDays: 7,
  notes: "Use the red-hibiscus infusion of the gin. The wash takes some of its colour.",
  demo: true,
};

const HARBOUR_SLUSH: Spec = {
  id: "demo-harbour-slush",
  name: "Harbour Slush",
  version: 1,
  lines: PEAR_BEACON.lines.map((one) => ({ ...one, heldBack: 0 })),
  topUp: { rule: "fixed" },
  serve: { pour: 100, method: "blended", glass: "Tall glass", garnish: "None" },
  keepDays: 3,
  notes: "The unwashed drink, to set beside Pear Beacon.",
  demo: true,
};

const plain = (
  id: string,
  name: string,
  procedure: string,
  lines: Spec["lines"],
  rest: Partial<Spec>,
): Spec => ({
  id: `demo-${id}`,
  name,
  version: 1,
  lines,
  topUp: { rule: "fixed" },
  procedure: { id: procedure, times: {} },
  serve: { pour: 50, method: "straight", glass: "Small glass", garnish: "None" },
  keepDays: 30,
  notes: "",
  demo: true,
  ...rest,
});

const SMOKED_BARLEY = plain(
  "smoked-barley",
  "Smoked Barley",
  "long-infusion",
  [line("whisky", "blended-whisky-40", 700, "ml"), line("barley", "roasted-barley", 70, "g")],
  { notes: "At room temperature. It turns bitter past 36 h." },
);

const BROWN_BUTTER = plain(
  "brown-butter-rye",
  "Brown-Butter Rye",
  "fat-wash",
  [line("rye", "rye-50", 700, "ml"), line("butter", "brown-butter", 90, "g")],
  { keepDays: 14, notes: "Melt the butter away from flames. Milk stays declared." },
);

const CHAMOMILE = plain(
  "chamomile-dry-vermouth",
  "Chamomile Dry Vermouth",
  "short-infusion",
  [line("vermouth", "dry-vermouth-18", 750, "ml"), line("chamomile", "chamomile", 6, "g")],
  { keepDays: 14 },
);

const SHERBET = plain(
  "citrus-skin-sherbet",
  "Citrus-Skin Sherbet",
  "sherbet",
  [
    line("skins", "citrus-skins", 100, "g"),
    line("sugar", "white-sugar", 400, "g"),
    line("juice", "lemon-juice", 400, "ml"),
  ],
  { keepDays: 7, notes: "Aim for 50 °Bx." },
);

/** The demo specs of The Salt Loft, an invented bar. */
export const DEMO_SPECS: readonly Spec[] = [
  PEAR_BEACON,
  BOATYARD,
  SMOKED_BARLEY,
  BROWN_BUTTER,
  CHAMOMILE,
  SHERBET,
  HARBOUR_SLUSH,
];
