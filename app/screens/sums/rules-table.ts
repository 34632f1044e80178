import type { Rule } from "../../../core/quantity/figure.ts";

const OIML = "OIML R 22 (1975), densities at 20 °C; masses add, volumes do not";
const DRINKS = `${OIML}; ICUMSA SPS-4 (1998) for sugar`;
const LIQUEURS =
  "0.5 to 2 kg/m³, up to 0.05 % vol, with sugar in it: our judgement, no measured liqueurs were found";
const FIT =
  "a widely quoted fit to stirred and shaken drinks of 15 to 35 % ABV, from memory; held from 50 % on";
const HEAT =
  "heat balance: heat capacity by Melinder (2010), melting 333.55 kJ/kg, heat of mixing from memory";
const CHARGES =
  "charge balance, activities by the Davies equation, constants of the acids at 25 °C from handbook tables";

/** How the bench sums are computed. */
export const SUM_RULES = {
  reduce: {
    key: "sum-reduce",
    formula: "V_water = V (x / x_wanted × ρ(x_wanted) − ρ(x)) / ρ(0)",
    source: OIML,
    limits:
      "within 0.05 in 100 of the worked examples of US gauging law (27 CFR 30.66), which are at 60 °F",
  },
  reduceSweet: {
    key: "sum-reduce-sweet",
    formula: "water until m_ethanol / (0.78924 g/ml) / V is the strength wanted",
    source: DRINKS,
    limits: LIQUEURS,
  },
  makes: { key: "sum-makes", formula: "V = (m₁ + m₂ + …) / ρ", source: DRINKS },
  together: { key: "sum-together", formula: "m = m₁ + m₂ + …", source: "masses add" },
  blendStrength: {
    key: "sum-blend-strength",
    formula: "ABV = Σ V_i x_i / V",
    source: OIML,
    limits: "plain spirits; sugar in them is left out",
  },
  shrinks: { key: "sum-shrinks", formula: "V₁ + V₂ + … − V", source: OIML },
  waterMass: {
    key: "sum-water-mass",
    formula: "m = V × 0.9982 g/ml",
    source: "OIML R 22 (1975), water at 20 °C",
  },
  letDown: { key: "sum-let-down", formula: "water = sweet / parts", source: "proportion" },
  scooped: {
    key: "sum-scooped",
    formula: "m = V × 0.8454 g/ml",
    source: "200 g of sugar to the US cup: definitions file of GNU units",
    limits: "scooping varies by 5 % or more",
  },
  honeyMass: {
    key: "sum-honey-mass",
    formula: "m = V × ρ, honey as 80 % sugars and 17.5 % water",
    source: "from memory of food tables; ICUMSA SPS-4 (1998) for its density",
    limits: "honeys run from 15 to 20 % water",
  },
  density: { key: "sum-density", formula: "ρ = m / V", source: DRINKS },
  saturation: {
    key: "sum-saturation",
    formula: "m_sugar / (m_sugar + m_water) at saturation",
    source: "Bubnik, Kadlec et al., Sugar Technologists Manual (1995)",
    limits: "sucrose in water: acid and honey keep more dissolved, spirit less",
  },
  acidAdd: {
    key: "sum-acid-add",
    formula: "m = c_aim × V_made − c_juice × V",
    source: "mass balance; the aim is common practice, from memory, no source",
    limits: "3 to 4 % more than practice weighs, which leaves out the room that acid takes",
  },
  acidMakes: {
    key: "sum-acid-makes",
    formula: "V_made = V + 0.598 ml/g × m_acid",
    source: "CRC Handbook, 102nd ed., densities of citric acid solutions at 20 °C",
    limits: "malic acid is given citric acid's room",
  },
  titratable: {
    key: "sum-titratable",
    formula: "lye to pH 8.2 × 64.04 g/mol, as citric acid",
    source: CHARGES,
    limits: "named acids only: ascorbic acid adds up to 0.2 g/L in citrus",
  },
  juicePh: { key: "sum-juice-ph", formula: "Σ charges = 0", source: CHARGES },
  mixPh: {
    key: "sum-mix-ph",
    formula: "Σ charges = 0; each pKa + 0.0135 per % ABV",
    source: `${CHARGES}; alcohol by Prenesti et al. (2012), seen at 12 %`,
    limits: "0.3 either way, more above 20 % ABV: our judgement; 25 °C",
  },
  saltMass: {
    key: "sum-salt-mass",
    formula: "m = V × ρ(w) × w",
    source: "density of sodium chloride solutions at 20 °C: Poradnik fizykochemiczny (WNT 1974)",
    limits: "within 0.4 kg/m³ of that table, 0 to 26 % by weight; dry salt",
  },
  salineWater: {
    key: "sum-saline-water",
    formula: "m = V × ρ(w) × (1 − w)",
    source: "density of sodium chloride solutions at 20 °C: Poradnik fizykochemiczny (WNT 1974)",
  },
  freezing: {
    key: "sum-freezing",
    formula: "T = −(ΔT_ethanol + ΔT_sugar), each by mol per kg of water",
    source: "CRC Handbook, 102nd ed., ethanol and sucrose in water",
    limits:
      "0.15 K for ethanol alone, 0.03 K for sugar alone; checked to 68 % ethanol and 42 % sugar by weight; fruit sugars go deeper",
  },
  iceShare: {
    key: "sum-ice-share",
    formula: "(m_water − m_unfrozen) / m, where what is unfrozen freezes at that temperature",
    source: "CRC Handbook, 102nd ed., as for the freezing point",
    limits: "at rest and in balance",
  },
  stirred: {
    key: "sum-stirred",
    formula: "V_water = V (−1.21 x² + 1.246 x + 0.145)",
    source: FIT,
    limits: "± 0.05 of the volume with ordinary ice and the usual 15 to 20 s",
  },
  shaken: {
    key: "sum-shaken",
    formula: "V_water = V (−1.567 x² + 1.742 x + 0.203)",
    source: FIT,
    limits: "± 0.05 of the volume with ordinary ice",
  },
  settled: {
    key: "sum-settled",
    formula: "heat given by the drink = heat taken by the ice that melts",
    source: HEAT,
    limits: "nothing from glass, tin, air or water on the ice",
  },
  blended: {
    key: "sum-blended",
    formula: "V_water = m_ice / 0.9982 g/ml, melted or not",
    source: "all of the ice is drunk",
  },
  glassTemperature: {
    key: "sum-glass-temperature",
    formula: "heat given by the drink = heat taken by the ice; never below where it would freeze",
    source: HEAT,
    limits: "a few degrees either way: our judgement",
  },
  glassStrength: {
    key: "sum-glass-strength",
    formula: "ABV = (m_ethanol / 0.78924 g/ml) / V",
    source: DRINKS,
    limits: "follows the water taken up",
  },
  coldVolume: {
    key: "sum-cold-volume",
    formula: "V(T) = (m_ethanol + m_water) / ρ(p, T) + m_sugar φ(T)",
    source: "OIML R 22 (1975) from −20 to 40 °C; ICUMSA SPS-4 (1998) for sugar",
    limits: "sugar below 0 °C as at 0",
  },
} as const satisfies Readonly<Record<string, Rule>>;
