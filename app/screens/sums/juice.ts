import { pHOf } from "../../../core/acid/charge-balance.ts";
import { cationToReach } from "../../../core/acid/juice.ts";
import { molarOf } from "../../../core/acid/molar.ts";
import { ACID_NAMES, type AcidMasses, totalAcid } from "../../../core/quantity/acid-name.ts";
import { type Figure, figure, given } from "../../../core/quantity/figure.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import { typedNumber } from "../../parts/typed-number.ts";
import { decimals } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import type { Reader } from "./read-sum.ts";
import { SUM_RULES } from "./rules-table.ts";

/** The choice that asks for figures instead of taking them from the cupboard. */
export const OWN_JUICE = "own";
export const OWN_ACIDS = ["citric", "malic", "tartaric"] as const;

/** A juice as chosen or typed. */
export interface JuiceDraft {
  readonly juice: string;
  readonly acids: Readonly<Record<(typeof OWN_ACIDS)[number], string>>;
  readonly pH: string;
}

/** What a juice is, as far as its acidity goes. */
export interface Juice {
  /** g per litre */
  readonly acids: AcidMasses;
  /** mol per litre; unknown without a pH */
  readonly cation: number | undefined;
  /** v/v */
  readonly strength: number;
  readonly cautions: readonly string[];
}

const { names, juice: words } = sayLater.sums;
/** More than any juice, g per litre: a powder in solution. */
const MOST_ACID = 500;

export const NO_JUICE: JuiceDraft = {
  juice: "orange-juice",
  acids: { citric: "", malic: "", tartaric: "" },
  pH: "",
};

/** What of a cupboard can stand for a juice: sour, and poured. */
export function soursOf(cupboard: ReadonlyMap<string, Ingredient>): readonly Ingredient[] {
  return [...cupboard.values()].filter(({ kind, acids }) => {
    const acid = totalAcid(acids);
    return kind !== "dry" && acid > 0 && acid <= MOST_ACID;
  });
}

function ownCation(acids: AcidMasses, text: string, read: Reader): number | undefined {
  if (text.trim() === "") return undefined;
  const pH = typedNumber(text.replace(/^\s*ph\s*/iu, ""), { low: 1, high: 7.5 });
  const reached = pH === undefined ? undefined : cationToReach(acids, pH);
  if (reached?.ok) return reached.value;
  const low = reached?.refusal === "ph-below-its-acids" ? Number(reached.about.low) : undefined;
  read.note("pH", low === undefined ? words.pHFault : words.pHBelow(decimals(low, 1)));
  return undefined;
}

function ownJuice(draft: JuiceDraft, read: Reader): Juice | undefined {
  const typed = OWN_ACIDS.map((name) => [name, read.acid(name, draft.acids[name])] as const);
  if (typed.some(([, value]) => value === undefined)) return undefined;
  const acids: AcidMasses = Object.fromEntries(typed);
  return { acids, cation: ownCation(acids, draft.pH, read), strength: 0, cautions: [] };
}

/** The juice of a form; nothing where a field of it is not understood. */
export function readJuice(
  draft: JuiceDraft,
  cupboard: ReadonlyMap<string, Ingredient>,
  read: Reader,
): Juice | undefined {
  const chosen = soursOf(cupboard).find(({ id }) => id === draft.juice);
  if (chosen === undefined) return ownJuice(draft, read);
  const { acids, cation, strength, cautions } = chosen;
  return { acids, cation, strength, cautions };
}

/** What is known of a juice, for the working of what follows from it. */
export function juiceFigures({ acids, cation, strength }: Juice): readonly Figure[] {
  const has = ACID_NAMES.flatMap((name) => {
    const value = acids[name] ?? 0;
    return value > 0 ? [given(names.acidHas[name], value, "g/L")] : [];
  });
  if (cation === undefined) return has;
  const pH = pHOf({ acids: molarOf(acids), cation, strength });
  return [...has, figure(names.juicePh, pH, "pH", SUM_RULES.juicePh, has)];
}
