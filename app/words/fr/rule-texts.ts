import type { RuleText } from "../rule-text.ts";

const OIML =
  "OIML R 22 (1975), masses volumiques à 20 °C ; les masses s’additionnent, les volumes non";
const DRINKS = `${OIML} ; ICUMSA SPS-4 (1998) pour le sucre`;
const BALANCE = "bilan de masse : les masses s’additionnent, quoi que fassent les volumes";
const FIT =
  "un ajustement souvent cité de boissons remuées et passées au shaker de 15 à 35 % vol, de mémoire ; fixe dès 50 %";
const HEAT =
  "bilan de chaleur : capacité thermique selon Melinder (2010), fusion 333,55 kJ/kg, chaleur de mélange de mémoire";
const CHARGES =
  "bilan des charges, activités par l’équation de Davies, constantes des acides à 25 °C de tables de manuel";
const SALT =
  "masse volumique de solutions de chlorure de sodium à 20 °C : Poradnik fizykochemiczny (WNT 1974)";
const DEFINITION = "définition";
const PROPORTION = "proportion simple";
const DEGREES = "quelques degrés de part et d’autre : notre jugement";

/** Comment chaque chiffre est calculé, par la clé de sa règle. */
export const ruleTexts: Readonly<Record<string, RuleText>> = {
  "as-given": { source: "saisi ou choisi dans cette application" },
  scale: {
    formula: "résolue : ce qui est en bouteille (ou remplit le récipient) = ce qui était demandé",
    source:
      "proportion, moins ce que gardent les filtres, par étapes répétées jusqu’à 1e-9 de la taille",
  },
  amount: {
    formula: "quantité du lot = quantité écrite × échelle × part",
    source: PROPORTION,
  },
  density: {
    formula: "ρ = m / V à 20 °C",
    source: "comme son volume, sauf si la maison l’a mesurée",
    limits: "environ 0,1 % pour des liquides sucrés et forts : notre jugement",
  },
  weight: { source: "définition de la masse volumique" },
  measure: { source: "définition de la masse volumique" },
  rounded: {
    formula: "la graduation la plus proche de l’outil, jamais à rien",
    source: "le doseur et la balance choisis dans Outils",
  },
  mass: { formula: "m = Σ m_i, de chaque ingrédient par ses propres chiffres", source: BALANCE },
  volume: {
    source:
      "OIML R 22 (1975) pour l’éthanol et l’eau ; ICUMSA SPS-4 (1998) pour le sucre ; volumes apparents du CRC Handbook, 102e éd., pour les acides",
    limits: "environ 0,1 % du volume pour des liquides sucrés et forts : notre jugement",
  },
  strength: {
    source: "OIML R 22 (1975), définition du titre alcoométrique volumique à 20 °C",
    limits:
      "sa fourchette : étiquettes dans ce que permet l’UE, doseurs dans les limites des mesures de service, les deux de seconde main",
  },
  "per-litre": { source: DEFINITION },
  brix: {
    source: "définition de l’ICUMSA : grammes de saccharose pour 100 g",
    limits: "un réfractomètre lit aussi l’alcool et l’acide comme du sucre",
  },
  ratio: { source: DEFINITION },
  milk: {
    formula: "V_lait = rapport × V_punch",
    source:
      "pratique courante, sans source : 1 part de lait pour 4 de punch ; recettes imprimées de 1 : 2,8 à 1 : 5",
  },
  serum: {
    formula:
      "V_clair = volume des masses du punch et de celles du lait sans matière grasse ni caséine",
    source:
      "bilan de masse ; volume comme aux autres stades ; composition du lait : tables d’aliments",
  },
  yield: {
    formula: "V_sort = V_clair − k × V_lait − V_filtre × filtres",
    source:
      "bilan de volume ; k de la pratique courante, sans source (0,25 à 0,45), ou de vos lots ; 20 ml par filtre : pratique courante, sans source",
    limits:
      "la fourchette contient ce que devraient donner 8 lots sur 10, et reste un jugement tant que vos lots ne la remplacent pas",
  },
  "held-back": {
    formula: "V = Σ quantité écrite × part réservée × échelle",
    source: "proportion ; le rendement mesuré, elle le suit, sauf si la fiche dit fixe",
  },
  "top-up": {
    formula: "V résolue : titre de (rendement + V) = titre visé",
    source:
      "bilan de masse avec contraction ; environ rendement × (visé − clarifié) / (spiritueux − visé)",
  },
  fill: { formula: "V_punch + V_lait", source: "volumes mesurés avant de se rencontrer" },
  serves: { formula: "embouteillé / dose", source: DEFINITION },
  "mix-ph": {
    formula:
      "Σ charges = 0 entre acides, leurs cations et les groupes titrables du lait, résolue pour le pH",
    source:
      "constantes de dissociation avec activité de Davies ; lait ajusté à un maximum publié de l’indice tampon de 27,7 mmol/L par pH",
    limits:
      "0,3 de part et d’autre avec du lait de vache jusqu’à 20 % vol, 0,5 là où l’absorption du lait est une estimation : notre jugement, aucune clarification mesurée n’a pu être ouverte",
  },
  onset: {
    formula: "5,1 + 0,032 × (t − 25 °C) + 0,02 par % vol, pour le lait de vache",
    source:
      "Food Hydrocolloids 7 (1993) 113, résumé, pour la température ; la pente avec l’alcool est supposée",
    limits: "mesuré sur du lait écrémé dilué ; pris à 20 °C ici",
  },
  freezing: {
    formula: "T_f = −[ΔT(éthanol) + ΔT(sucre) + ΔT(acides et solides)], chacun par kg d’eau",
    source: "CRC Handbook of Chemistry and Physics, 102e éd., pour l’éthanol et le saccharose",
    limits: "environ 0,3 °C ; une bouteille immobile peut rester liquide quelques degrés plus bas",
  },
  "glass-temperature": {
    formula:
      "chaleur de la boisson + chaleur de la glace + chaleur de mélange = 0, jusqu’à son point de congélation",
    source: "bilan de chaleur ; glace 333,55 kJ/kg ; bouteille du frigo prise à 4 °C",
    limits: `${DEGREES} ; verre et air laissés de côté`,
  },
  ice: {
    formula: "l’eau qui gèle jusqu’à ce que le reste gèle à cette température",
    source: "points de congélation comme plus haut ; bilan de chaleur avec la glace qui entre",
    limits: "la chaleur du blender est laissée de côté : elle en fond un peu",
  },
  water: {
    formula: "eau par volume = a x² + b x + c, x le titre avant la glace ; mixé : bilan de chaleur",
    source:
      "un ajustement souvent cité de boissons remuées et passées au shaker, de mémoire ; chaleur latente 333,55 kJ/kg",
    limits: "± 0,05 du volume avec de la glace ordinaire",
  },
  "own-water": {
    formula: "eau = dose × part",
    source: "mesuré par cette maison, écrit dans la fiche",
  },
  "per-kg-water": { formula: "1000 × m / m_eau", source: DEFINITION },
  "batch-cost": {
    formula: "C = Σ quantité × payé / emballage",
    source: "somme des ingrédients qui ont un prix",
    limits: "ingrédients seuls : sans garniture, glace, filtres, travail ni taxe",
  },
  "serve-cost": {
    formula: "c = C × dose / embouteillé",
    source: "proportion ; ce que gardent caillé et filtres est payé par ce qui est embouteillé",
  },
  "pour-cost": { formula: "c / prix de la carte", source: DEFINITION },
  "sum-reduce": {
    source: OIML,
    limits:
      "à moins de 0,05 pour 100 des exemples de la loi de jaugeage des États-Unis (27 CFR 30.66), qui sont à 60 °F",
  },
  "sum-reduce-sweet": {
    formula: "de l’eau jusqu’à ce que m_éthanol / (0,78924 g/ml) / V soit le titre voulu",
    source: DRINKS,
    limits:
      "0,5 à 2 kg/m³, jusqu’à 0,05 % vol, avec du sucre : notre jugement, aucune liqueur mesurée n’a été trouvée",
  },
  "sum-makes": { source: DRINKS },
  "sum-together": { source: "les masses s’additionnent" },
  "sum-blend-strength": {
    formula: "titre = Σ V_i x_i / V",
    source: OIML,
    limits: "spiritueux secs ; leur sucre est laissé de côté",
  },
  "sum-shrinks": { source: OIML },
  "sum-water-mass": { source: "OIML R 22 (1975), eau à 20 °C" },
  "sum-let-down": { formula: "eau = sucrant / parts", source: PROPORTION },
  "sum-scooped": {
    source: "200 g de sucre à la tasse des États-Unis : fichier de définitions de GNU units",
    limits: "mesurer à la cuillère varie de 5 % ou plus",
  },
  "sum-honey-mass": {
    formula: "m = V × ρ, miel à 80 % de sucres et 17,5 % d’eau",
    source: "de mémoire, de tables d’aliments ; ICUMSA SPS-4 (1998) pour sa masse volumique",
    limits: "les miels vont de 15 à 20 % d’eau",
  },
  "sum-density": { source: DRINKS },
  "sum-saturation": {
    formula: "m_sucre / (m_sucre + m_eau) à saturation",
    source: "Bubnik, Kadlec et autres, Sugar Technologists Manual (1995)",
    limits: "saccharose dans l’eau : acide et miel en gardent plus de dissous, le spiritueux moins",
  },
  "sum-acid-add": {
    formula: "m = c_visée × V_fait − c_jus × V",
    source: "bilan de masse ; la cible est pratique courante, de mémoire, sans source",
    limits: "3 à 4 % de plus que la pratique, qui oublie la place que prend l’acide",
  },
  "sum-acid-makes": {
    source: "CRC Handbook, 102e éd., masses volumiques de solutions d’acide citrique à 20 °C",
    limits: "l’acide malique reçoit la place du citrique",
  },
  "sum-titratable": {
    formula: "soude jusqu’à pH 8,2 × 64,04 g/mol, en acide citrique",
    source: CHARGES,
    limits: "acides nommés seulement : l’ascorbique en ajoute jusqu’à 0,2 g/L dans les agrumes",
  },
  "sum-juice-ph": { source: CHARGES },
  "sum-mix-ph": {
    formula: "Σ charges = 0 ; chaque pKa + 0,0135 par % vol",
    source: `${CHARGES} ; alcool selon Prenesti et autres (2012), vu à 12 %`,
    limits: "0,3 de part et d’autre, plus au-dessus de 20 % vol : notre jugement ; 25 °C",
  },
  "sum-salt-mass": {
    source: SALT,
    limits: "à moins de 0,4 kg/m³ de cette table, de 0 à 26 % en poids ; sel sec",
  },
  "sum-saline-water": { source: SALT },
  "sum-freezing": {
    formula: "T = −(ΔT_éthanol + ΔT_sucre), chacun par mol par kg d’eau",
    source: "CRC Handbook, 102e éd., éthanol et saccharose dans l’eau",
    limits:
      "0,15 K pour l’éthanol seul, 0,03 K pour le sucre seul ; vérifié jusqu’à 68 % d’éthanol et 42 % de sucre en poids ; les sucres des fruits descendent plus bas",
  },
  "sum-ice-share": {
    formula: "(m_eau − m_non_gelée) / m, où ce qui n’est pas gelé gèle à cette température",
    source: "CRC Handbook, 102e éd., comme pour le point de congélation",
    limits: "au repos et en équilibre",
  },
  "sum-stirred": {
    source: FIT,
    limits: "± 0,05 du volume avec de la glace ordinaire et les 15 à 20 s usuelles",
  },
  "sum-shaken": { source: FIT, limits: "± 0,05 du volume avec de la glace ordinaire" },
  "sum-settled": {
    formula: "chaleur donnée par la boisson = chaleur prise par la glace qui fond",
    source: HEAT,
    limits: "rien du verre, du métal, de l’air ni de l’eau sur la glace",
  },
  "sum-blended": {
    formula: "V_eau = m_glace / 0,9982 g/ml, fondue ou non",
    source: "toute la glace est bue",
  },
  "sum-glass-temperature": {
    formula:
      "chaleur donnée par la boisson = chaleur prise par la glace ; jamais sous son point de congélation",
    source: HEAT,
    limits: DEGREES,
  },
  "sum-glass-strength": {
    formula: "titre = (m_éthanol / 0,78924 g/ml) / V",
    source: DRINKS,
    limits: "suit l’eau prise",
  },
  "sum-cold-volume": {
    source: "OIML R 22 (1975) de −20 à 40 °C ; ICUMSA SPS-4 (1998) pour le sucre",
    limits: "le sucre sous 0 °C comme à 0",
  },
};
