/** Where each caution comes from, and how well it was read. */
export const sources: Readonly<Record<string, string>> = {
  "keep-cold":
    "code alimentaire modèle des États-Unis 3-501.14 et 3-501.16 par des règles d’États, lu en extraits",
  "milk-stays":
    "code des pratiques de collage OIV-SECSAN 520-2014, lu en extrait ; composition du petit-lait de mémoire",
  "raw-egg": "pratique courante, sans source",
  "oil-infusion":
    "conseils de deux universités des États-Unis (2 à 10 jours ; le plus court est retenu)",
  overproof:
    "points d’éclair de l’éthanol et de l’eau, table publique : 24 °C à 50 %, 22 °C à 60 %",
  grapefruit:
    "un article de presse citant l’autorité américaine des aliments et médicaments (CYP3A4)",
  quinine: "21 CFR 172.575, lu en extrait",
  coumarin: "21 CFR 189.130, lu en extrait ; EFSA 2008",
  "fresh-juice": "21 CFR 101.17(g) et 120, par une page de sécurité alimentaire",
};
