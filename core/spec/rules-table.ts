import type { Rule } from "../quantity/figure.ts";

/** How the numbers of a plan are computed; the words catalogue explains each in plain language. */
export const RULES = {
  scale: {
    key: "scale",
    formula: "solved: what stands in the bottle (or fills the vessel) = what was asked for",
    source: "proportion, less what the filters keep, in repeated steps to 1e-9 of the size",
  },
  amount: {
    key: "amount",
    formula: "batch amount = written amount × scale × share",
    source: "proportion",
  },
  density: {
    key: "density",
    formula: "ρ = m / V at 20 °C",
    source: "as its volume, unless the house measured it",
    limits: "about 0.1 % for sweet, strong liquids: our judgement",
  },
  weight: { key: "weight", formula: "m = V × ρ", source: "definition of density" },
  measure: { key: "measure", formula: "V = m / ρ", source: "definition of density" },
  rounded: {
    key: "rounded",
    formula: "nearest step of the tool, never to nothing",
    source: "the jigger and scale chosen in Kit",
  },
  mass: {
    key: "mass",
    formula: "m = Σ m_i, of each ingredient by its own figures",
    source: "mass balance: masses add, whatever volumes do",
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
  serum: {
    key: "serum",
    formula: "V_serum = volume of the punch's masses and the milk's without fat and casein",
    source: "mass balance; volume as at the other stages; composition of milk: food tables",
  },
  yield: {
    key: "yield",
    formula: "V_out = V_serum − k × V_milk − V_filter × filters",
    source:
      "volume balance; k from common practice, no source (0.25 to 0.45), or from own batches; 20 ml per filter: common practice, no source",
    limits:
      "the interval holds what 8 in 10 batches should give, and is a judgement until own batches replace it",
  },
  heldBack: {
    key: "held-back",
    formula: "V = Σ written amount × share held back × scale",
    source: "proportion; once the yield is measured it follows it, unless the spec says fixed",
  },
  topUp: {
    key: "top-up",
    formula: "V solved: strength of (yield + V) = target",
    source: "mass balance with contraction; about yield × (target − washed) / (spirit − target)",
  },
  fill: {
    key: "fill",
    formula: "V_punch + V_milk",
    source: "volumes as measured before they meet",
  },
  serves: { key: "serves", formula: "bottled / pour", source: "definition" },
  mixPh: {
    key: "mix-ph",
    formula: "Σ charges = 0 over acids, their cations and milk's titratable groups, solved for pH",
    source:
      "dissociation constants with Davies activity; milk fitted to a published buffer index maximum of 27.7 mmol/L per pH",
    limits:
      "0.3 either way with cow's milk up to 20 % vol, 0.5 where the milk's uptake is a guess: our judgement, no measured wash could be opened",
  },
  onset: {
    key: "onset",
    formula: "5.1 + 0.032 × (t − 25 °C) + 0.02 per % vol, for cow's milk",
    source:
      "Food Hydrocolloids 7 (1993) 113, abstract, for the temperature; the slope with alcohol is assumed",
    limits: "measured on diluted skim milk; taken at 20 °C here",
  },
  freezing: {
    key: "freezing",
    formula: "T_f = −[ΔT(ethanol) + ΔT(sugar) + ΔT(acids and solids)], each per kg of water",
    source: "CRC Handbook of Chemistry and Physics, 102nd ed., for ethanol and sucrose",
    limits: "about 0.3 °C; an undisturbed bottle can stay liquid some degrees colder",
  },
  glassTemperature: {
    key: "glass-temperature",
    formula: "heat of drink + heat of ice + heat of mixing = 0, down to its freezing point",
    source: "heat balance; ice 333.55 kJ/kg; a bottle from the fridge taken at 4 °C",
    limits: "a few degrees either way: our judgement; glass and air left out",
  },
  ice: {
    key: "ice",
    formula: "water that freezes out until what is left freezes at this temperature",
    source: "freezing points as above; heat balance with the ice that goes in",
    limits: "the blender's own heat is left out: it melts some",
  },
  water: {
    key: "water",
    formula: "water per volume = a x² + b x + c, x the strength before ice; blended: heat balance",
    source:
      "a widely quoted fit to stirred and shaken drinks, from memory; latent heat 333.55 kJ/kg",
    limits: "± 0.05 of the volume with ordinary ice",
  },
  ownWater: {
    key: "own-water",
    formula: "water = pour × share",
    source: "measured by this house, written in the spec",
  },
  perKgWater: { key: "per-kg-water", formula: "1000 × m / m_water", source: "definition" },
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
