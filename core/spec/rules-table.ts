import type { Rule } from "../quantity/figure.ts";

/** How the numbers of a plan are computed; the words catalogue explains each in plain language. */
export const RULES = {
  scale: {
    key: "scale",
    formula: "batch amount = written amount × scale",
    source: "proportion",
  },
  volume: {
    key: "volume",
    formula: "V = (m_ethanol + m_water) / ρ(p, 20 °C) + Σ m_i φ_i",
    source:
      "OIML R 22 (1975) for ethanol and water; ICUMSA SPS-4 (1998) for sugar; apparent volumes from the CRC Handbook, 102nd ed., for acids",
    limits: "about 0.1 % of the volume for sweet, strong liquids: our judgement",
  },
  strength: {
    key: "strength",
    formula: "ABV = (m_ethanol / 0.78924 g/ml) / V",
    source: "OIML R 22 (1975), definition of alcoholic strength by volume at 20 °C",
    limits:
      "its range: labels within what EU law allows, measures within the limits of serving measures, both second hand",
  },
  perLitre: {
    key: "per-litre",
    formula: "g/L = m / V",
    source: "definition",
  },
  brix: {
    key: "brix",
    formula: "°Brix = 100 × m_sugar / m_total",
    source: "ICUMSA definition: grams of sucrose per 100 g",
    limits: "a refractometer reads alcohol and acid as sugar too",
  },
  ratio: { key: "ratio", formula: "m_sugar / m_acid", source: "definition" },
  milk: {
    key: "milk",
    formula: "V_milk = ratio × V_punch",
    source:
      "common practice, no source: 1 part milk to 4 of punch, printed recipes 1 : 2.8 to 1 : 5",
  },
  yield: {
    key: "yield",
    formula: "V_out = V_serum − k × V_milk − 20 ml × filters",
    source: "volume balance; k from common practice, no source (0.25 to 0.45), or from own batches",
    limits:
      "the interval holds what 8 in 10 batches should give, and is a judgement until own batches replace it",
  },
  topUp: {
    key: "top-up",
    formula: "V = V_planned × yield / yield_planned, or solved for a target strength",
    source: "proportion; mass balance with contraction for a target",
  },
  water: {
    key: "water",
    formula: "water per volume = a x² + b x + c, x the strength before ice; blended: heat balance",
    source:
      "a widely quoted fit to stirred and shaken drinks, from memory; latent heat 333.55 kJ/kg",
    limits: "± 0.05 of the volume with ordinary ice",
  },
  batchCost: {
    key: "batch-cost",
    formula: "C = Σ amount × paid / pack",
    source: "sum over the ingredients that have a price",
    limits: "ingredients alone: no garnish, ice, filters, work or tax",
  },
  serveCost: {
    key: "serve-cost",
    formula: "c = C × pour / bottled",
    source: "proportion; what curd and filters keep is paid for by what is bottled",
  },
  pourCost: { key: "pour-cost", formula: "c / menu price", source: "definition" },
} as const satisfies Readonly<Record<string, Rule>>;
