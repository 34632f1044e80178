import type { AcidMasses } from "../quantity/acid-name.ts";
import { ABSORPTIONS } from "./absorption-table.ts";
import { OVERPROOF_FROM } from "./caution-table.ts";
import type { Ingredient } from "./ingredient.ts";

/**
 * The cupboard a new house starts with: generic ingredients, no brands, all editable.
 * Acids and net strong cation of juices: Penniston and others, J. Endourology 22 (2008) for citric
 * acid; the cation calibrated on published pH ranges (reference notes, read 2026-11-25).
 * Sugar of juices, strength of liqueurs and wines, solids of tea: typical values from memory.
 * Syrups: °Brix by weight of sugar, exact by construction; honey syrup from memory.
 */
type Start = Partial<Omit<Ingredient, "id" | "name" | "kind">>;

const entry = (id: string, name: string, kind: Ingredient["kind"], rest: Start): Ingredient => ({
  id,
  name,
  kind,
  strength: 0,
  sweetness: { as: "g/L", value: 0 },
  acids: {},
  cation: 0,
  allergens: [],
  cautions: [],
  ...rest,
});

const spirit = (id: string, name: string, abv: number): Ingredient =>
  entry(id, name, "spirit", {
    strength: abv / 100,
    cautions: abv / 100 >= OVERPROOF_FROM ? ["overproof"] : [],
  });

const syrup = (id: string, name: string, brix: number): Ingredient =>
  entry(id, name, "syrup", { sweetness: { as: "brix", value: brix } });

const juice = (
  id: string,
  name: string,
  sugar: number,
  acids: AcidMasses,
  cation: number,
  cautions: string[] = [],
): Ingredient =>
  entry(id, name, "juice", {
    sweetness: { as: "g/L", value: sugar },
    acids: { ...acids },
    cation,
    cautions: ["fresh-juice", ...cautions],
  });

/** Steeped and strained out: it adds nothing that is counted, and keeps some of the liquid. */
const botanical = (
  id: string,
  name: string,
  absorbs: number,
  allergens: Ingredient["allergens"] = [],
): Ingredient => entry(id, name, "dry", { absorbs, allergens });

/** Ingredients every house starts with. */
export const CUPBOARD: readonly Ingredient[] = [
  spirit("vodka-40", "Vodka 40 %", 40),
  spirit("gin-43", "Gin 43 %", 43),
  spirit("white-rum-40", "White rum 40 %", 40),
  spirit("aged-rum-40", "Aged rum 40 %", 40),
  spirit("pot-still-rum-57", "Aged pot-still rum 57 %", 57),
  spirit("blended-whisky-40", "Blended whisky 40 %", 40),
  spirit("rye-50", "Rye whiskey 50 %", 50),
  spirit("brandy-40", "Brandy 40 %", 40),
  spirit("pear-eau-de-vie-42", "Pear eau-de-vie 42 %", 42),
  spirit("agave-spirit-40", "Agave spirit 40 %", 40),
  spirit("neutral-96", "Neutral spirit 96 %", 96),
  entry("orange-liqueur-40", "Orange liqueur 40 %", "liqueur", {
    strength: 0.4,
    sweetness: { as: "g/L", value: 240 },
  }),
  entry("allspice-liqueur-22", "Allspice liqueur 22 %", "liqueur", {
    strength: 0.22,
    sweetness: { as: "g/L", value: 280 },
  }),
  entry("dry-vermouth-18", "Dry vermouth 18 %", "wine", {
    strength: 0.18,
    sweetness: { as: "g/L", value: 40 },
    acids: { tartaric: 5.5 },
    cation: 0.028,
    allergens: ["sulphites"],
  }),
  entry("sweet-vermouth-16", "Sweet vermouth 16 %", "wine", {
    strength: 0.16,
    sweetness: { as: "g/L", value: 150 },
    acids: { tartaric: 4.5 },
    cation: 0.024,
    allergens: ["sulphites"],
  }),
  entry("red-wine-13", "Red wine 13 %", "wine", {
    strength: 0.13,
    sweetness: { as: "g/L", value: 2 },
    acids: { tartaric: 5.5 },
    cation: 0.03,
    allergens: ["sulphites"],
  }),
  juice("lemon-juice", "Lemon juice, fresh", 25, { citric: 48, malic: 2 }, 0.034),
  juice("lime-juice", "Lime juice, fresh", 17, { citric: 46, malic: 2 }, 0.035),
  juice("orange-juice", "Orange juice, fresh", 84, { citric: 9.1, malic: 1.7 }, 0.055),
  juice("grapefruit-juice", "Grapefruit juice, fresh", 70, { citric: 15, malic: 0.7 }, 0.045, [
    "grapefruit",
  ]),
  juice("pineapple-juice", "Pineapple juice", 110, { citric: 5.5, malic: 1.8 }, 0.04),
  syrup("syrup-1-1", "Sugar syrup 1:1 by weight", 50),
  syrup("syrup-2-1", "Sugar syrup 2:1 by weight", 66.7),
  syrup("honey-syrup-1-1", "Honey syrup 1:1 by weight", 41),
  syrup("ginger-syrup-2-1", "Ginger syrup 2:1 by weight", 64),
  syrup("agave-syrup", "Agave syrup", 74),
  entry("black-tea", "Black tea, strong, cooled", "tea", {}),
  entry("oolong-tea", "Oolong tea, strong, cooled", "tea", {}),
  entry("green-tea", "Green tea, cooled", "tea", {}),
  entry("water", "Water", "water", {}),
  entry("aromatic-bitters-44", "Aromatic bitters 44 %", "bitters", { strength: 0.44 }),
  entry("milk-whole", "Whole milk, pasteurised", "dairy", {
    dairy: "whole",
    allergens: ["milk"],
    cautions: ["keep-cold"],
  }),
  entry("milk-skim", "Skim milk, pasteurised", "dairy", {
    dairy: "skim",
    allergens: ["milk"],
    cautions: ["keep-cold"],
  }),
  entry("cream", "Cream 36 % fat, pasteurised", "dairy", {
    dairy: "cream",
    allergens: ["milk"],
    cautions: ["keep-cold"],
  }),
  entry("soy-milk", "Soy milk", "dairy", {
    dairy: "soy",
    allergens: ["soy"],
    cautions: ["keep-cold"],
  }),
  entry("oat-milk", "Oat milk", "dairy", {
    dairy: "oat",
    allergens: ["gluten"],
    cautions: ["keep-cold"],
  }),
  entry("almond-milk", "Almond milk", "dairy", {
    dairy: "almond",
    allergens: ["nuts"],
    cautions: ["keep-cold"],
  }),
  entry("coconut-milk", "Coconut milk", "dairy", { dairy: "coconut", cautions: ["keep-cold"] }),
  entry("white-sugar", "White sugar", "dry", { sweetness: { as: "g/L", value: 1000 } }),
  entry("citric-acid", "Citric acid, powder", "dry", { acids: { citric: 1000 } }),
  entry("malic-acid", "Malic acid, powder", "dry", { acids: { malic: 1000 } }),
  entry("tartaric-acid", "Tartaric acid, powder", "dry", { acids: { tartaric: 1000 } }),
  entry("salt", "Salt", "dry", { solids: 1000 }),
  // What botanicals keep: from memory, about half as much either way (absorption-table.ts).
  botanical("coffee-beans", "Coffee beans, cracked", ABSORPTIONS.coffee.usual),
  botanical("tea-leaves", "Tea leaves, dry", ABSORPTIONS.tea.usual),
  botanical("chamomile", "Chamomile flowers, dried", ABSORPTIONS.tea.usual),
  botanical("hibiscus", "Hibiscus flowers, dried", ABSORPTIONS.tea.usual),
  botanical("cinnamon-bark", "Cinnamon bark", ABSORPTIONS.spice.usual),
  botanical("roasted-barley", "Roasted barley", ABSORPTIONS.spice.usual, ["gluten"]),
  botanical("cacao-nibs", "Cacao nibs", ABSORPTIONS.nibs.usual),
  botanical("citrus-skins", "Citrus skins, without pith", ABSORPTIONS.peel.usual),
  // Lifted off hard and cold, fat keeps little spirit; how much was not measured.
  entry("brown-butter", "Browned butter", "dry", { allergens: ["milk"] }),
];
