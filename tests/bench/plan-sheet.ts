// The plan of a washed batch as a general spreadsheet would hold it: one row per ingredient, the same
// formulas as the core's (OIML R 22, ICUMSA SPS-4, apparent volumes), the water of each ingredient by
// repeated columns, the scale by repeated blocks.
import { ETHANOL_DENSITY } from "../../core/liquid/ethanol-water.ts";
import { OIML_A } from "../../core/liquid/ethanol-water-table.ts";
import { ACID_APPARENT_VOLUME, SOLIDS_APPARENT_VOLUME } from "../../core/liquid/solute-table.ts";
import { waterDensity } from "../../core/liquid/sucrose.ts";
import { SPS4_B } from "../../core/liquid/sucrose-table.ts";
import type { HouseRules } from "../../core/spec/house-rules.ts";
import type { Ingredient } from "../../core/spec/ingredient.ts";
import type { Spec } from "../../core/spec/spec.ts";

type Cell = string | number;

/** Columns that find an ingredient's water; each comes about three times closer. */
const TURNS = 12;
/** Blocks that find the scale. */
const BLOCKS = 3;
const FIRST = 2;

/** 0 is A. */
function letter(column: number): string {
  const rest = String.fromCharCode(65 + (column % 26));
  return column < 26 ? rest : `${letter(Math.floor(column / 26) - 1)}${rest}`;
}

const horner = (coefficients: readonly number[], x: string): string =>
  [...coefficients]
    .reverse()
    .reduce((sum, one) => (sum === "" ? `${one}` : `(${sum})*${x}+${one}`), "");

const density = (p: string): string => `(${horner(OIML_A, p)})`;
const rise = (w: string): string => `(${horner(SPS4_B[0] ?? [], w)})`;
const WATER = waterDensity(20);

/** ml that a gram of sugar adds beside so much water. */
const sugarVolume = (w: string): string =>
  `(1000*(${WATER}-(1-${w})*${rise(w)})/(${WATER}*(${WATER}+${w}*${rise(w)})))`;

/** Names of cells that hold the masses of a liquid, g. */
interface Masses {
  readonly ethanol: string;
  readonly water: string;
  readonly sugar: string;
  readonly citric: string;
  readonly malic: string;
  readonly tartaric: string;
  readonly solids: string;
}

const acidsVolume = (of: Pick<Masses, "citric" | "malic" | "tartaric">): string =>
  `(${of.citric}*${ACID_APPARENT_VOLUME.citric}+${of.malic}*${ACID_APPARENT_VOLUME.malic}+${of.tartaric}*${ACID_APPARENT_VOLUME.tartaric})`;

const volume = (of: Masses): string => {
  const solvent = `(${of.ethanol}+${of.water})`;
  const w = `(${of.sugar}/(${of.sugar}+${of.water}))`;
  return `1000*${solvent}/${density(`(${of.ethanol}/${solvent})`)}+${of.sugar}*${sugarVolume(w)}+${acidsVolume(of)}+${of.solids}*${SOLIDS_APPARENT_VOLUME}`;
};

/** One more round of the water in a litre: what the rest of the volume leaves room for. */
function moreWater(row: number, was: string): string {
  const of = { citric: `E${row}`, malic: `F${row}`, tartaric: `G${row}` };
  const e = `(C${row}*${ETHANOL_DENSITY})`;
  const sugar = `D${row}*${sugarVolume(`(D${row}/(D${row}+${was}))`)}`;
  return `=IF(I${row}=1,0,(1000-${sugar}-${acidsVolume(of)})*${density(`(${e}/(${e}+${was}))`)}/1000-${e})`;
}

const WATER_COLUMN = 10 + TURNS;

function ingredientRow(ingredient: Ingredient, ml: number, held: number, row: number): Cell[] {
  const { strength, sweetness, acids, kind } = ingredient;
  const brix = sweetness.value / 100;
  const sugar: Cell =
    sweetness.as === "brix" ? `=${brix}*(${WATER}+${brix}*${rise(`${brix}`)})` : sweetness.value;
  const turns = Array.from({ length: TURNS }, (_, turn) =>
    moreWater(row, `${letter(9 + turn)}${row}`),
  );
  const w = `${letter(WATER_COLUMN - 1)}${row}`;
  const gramsPerMl = `=IF(I${row}=1,0,(C${row}*${ETHANOL_DENSITY}+${w}+D${row}+E${row}+F${row}+G${row})/1000)`;
  const { citric = 0, malic = 0, tartaric = 0 } = acids;
  const start = `=IF(I${row}=1,0,998.2*(1-C${row})-0.62*D${row})`;
  const cells = [ml, strength, sugar, citric, malic, tartaric, held, kind === "dry" ? 1 : 0, start];
  return [ingredient.name, ...cells, ...turns, gramsPerMl, `=1-H${row}`];
}

/** A sheet, and where its results stand: column B of these rows (counted from 1). */
export interface PlanSheet {
  readonly cells: Cell[][];
  readonly rows: Readonly<
    Record<"target" | "scale" | "finalMl" | "strength" | "sugar" | "acid", number>
  >;
}

type Named = (name: string, formula: Cell) => string;

function sums(name: Named, label: string, last: number, share: string): Masses {
  const range = (column: string) => `${column}${FIRST}:${column}${last}`;
  const sum = (what: string, column: string, by = 1) =>
    name(`${label} ${what}`, `=SUMPRODUCT(${range("B")},${range(column)},${share})*${by / 1000}`);
  return {
    ethanol: sum("ethanol", "C", ETHANOL_DENSITY),
    water: sum("water", letter(WATER_COLUMN - 1)),
    sugar: sum("sugar", "D"),
    citric: sum("citric", "E"),
    malic: sum("malic", "F"),
    tartaric: sum("tartaric", "G"),
    solids: name(`${label} solids`, 0),
  };
}

const KEYS = ["ethanol", "water", "sugar", "citric", "malic", "tartaric", "solids"] as const;

function combined(name: Named, label: string, formula: (key: keyof Masses) => string): Masses {
  const cell = (key: keyof Masses) => name(`${label} ${key}`, `=${formula(key)}`);
  const [ethanol, water, sugar, citric, malic, tartaric, solids] = KEYS.map(cell);
  return {
    ethanol: ethanol ?? "",
    water: water ?? "",
    sugar: sugar ?? "",
    citric: citric ?? "",
    malic: malic ?? "",
    tartaric: tartaric ?? "",
    solids: solids ?? "",
  };
}

function balance(name: Named, label: string, of: Masses, ml: string) {
  const acid = `(${of.citric}+${of.malic}+${of.tartaric})`;
  const all = KEYS.map((key) => of[key]).join("+");
  name(`${label} °Brix`, `=100*${of.sugar}/(${all})`);
  name(`${label} ratio`, `=${of.sugar}/${acid}`);
  return {
    strength: name(`${label} ABV`, `=1000*${of.ethanol}/${ETHANOL_DENSITY}/${ml}`),
    sugar: name(`${label} sugar g/L`, `=1000*${of.sugar}/${ml}`),
    acid: name(`${label} acid g/L`, `=1000*${acid}/${ml}`),
  };
}

/** The milk as the core has it, g per ml: water, and milk sugar with the other solids. */
export interface SheetMilk {
  readonly water: number;
  readonly solids: number;
}

/** Builds the sheet of a washed spec whose lines are ml, or g for what is dry. */
export function planSheet(
  spec: Spec,
  lines: readonly { readonly ingredient: Ingredient; readonly ml: number; readonly held: number }[],
  milk: SheetMilk,
  target: number,
  house: HouseRules,
): PlanSheet {
  const cells: Cell[][] = [
    ["ingredient", "ml", "ABV", "sugar", "citric", "malic", "tartaric", "held"],
  ];
  for (const [at, { ingredient, ml, held }] of lines.entries()) {
    cells.push(ingredientRow(ingredient, ml, held, FIRST + at));
  }
  const last = FIRST + lines.length - 1;
  const name: Named = (label, formula) => {
    cells.push([label, formula]);
    return `$B$${cells.length}`;
  };
  const wanted = name("target ml", target);
  const before = sums(
    name,
    "before",
    last,
    `${letter(WATER_COLUMN + 1)}${FIRST}:${letter(WATER_COLUMN + 1)}${last}`,
  );
  const after = sums(name, "after", last, `H${FIRST}:H${last}`);
  const punch = name("punch ml", `=${volume(before)}`);
  const milkMl = name("milk ml", `=${spec.wash?.ratio ?? 0}*${punch}`);
  const whey: Readonly<Partial<Masses>> = {
    water: `${milk.water}*${milkMl}`,
    solids: `${milk.solids}*${milkMl}`,
  };
  const serum = combined(name, "serum", (key) => `${before[key]}+${whey[key] ?? 0}`);
  const serumMl = name("serum ml", `=${volume(serum)}`);
  const keeps = (spec.wash?.filters ?? 0) * house.perFilter;
  const bottle = (label: string, scale: string, filters: number) => {
    const share = name(
      `${label} share`,
      `=MAX(0,${serumMl}-${house.retention.mean}*${milkMl}-${filters}/${scale})/${serumMl}`,
    );
    return combined(name, label, (key) => `(${serum[key]}*${share}+${after[key]})*${scale}`);
  };
  const one = name("one", 1);
  const perScale = name("ml per scale", `=${volume(bottle("lossless", one, 0))}`);
  let scale = name("scale 0", `=${wanted}/${perScale}`);
  for (let block = 1; block <= BLOCKS; block += 1) {
    const got = name(`ml ${block}`, `=${volume(bottle(`block ${block}`, scale, keeps))}`);
    scale = name(`scale ${block}`, `=${scale}+(${wanted}-${got})/${perScale}`);
  }
  const final = bottle("final", scale, keeps);
  const finalMl = name("final ml", `=${volume(final)}`);
  balance(name, "mixed", before, punch);
  balance(name, "washed", serum, serumMl);
  const { strength, sugar, acid } = balance(name, "final", final, finalMl);
  for (const [at, { ingredient }] of lines.entries()) {
    const row = FIRST + at;
    const grams = `${letter(WATER_COLUMN)}${row}`;
    for (const [part, share] of [
      ["before", `(1-H${row})`],
      ["after", `H${row}`],
    ] as const) {
      const ml = name(`${ingredient.name} ${part} ml`, `=B${row}*${share}*${scale}`);
      name(`${ingredient.name} ${part} g`, `=IF(I${row}=1,${ml},${ml}*${grams})`);
    }
  }
  const rowOf = (cell: string) => Number(cell.replace("$B$", ""));
  return {
    cells,
    rows: {
      target: rowOf(wanted),
      scale: rowOf(scale),
      finalMl: rowOf(finalMl),
      strength: rowOf(strength),
      sugar: rowOf(sugar),
      acid: rowOf(acid),
    },
  };
}
