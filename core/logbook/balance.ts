import {
  acidPerLitre,
  type Liquid,
  strengthOf,
  sugarPerLitre,
  sugarToAcid,
} from "../liquid/liquid.ts";

/** The balance of a drink: v/v, g per litre, and sugar per acid by mass where there is acid. */
export interface Balance {
  readonly strength: number;
  readonly sugar: number;
  readonly acid: number;
  readonly ratio?: number;
}

/** The balance of a liquid, of any amount. */
export function balanceIn(liquid: Liquid): Balance {
  const ratio = sugarToAcid(liquid);
  return {
    strength: strengthOf(liquid),
    sugar: sugarPerLitre(liquid),
    acid: acidPerLitre(liquid),
    ...(ratio === null ? {} : { ratio }),
  };
}
