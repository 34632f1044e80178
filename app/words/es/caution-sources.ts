/** Where each caution comes from, and how well it was read. */
export const sources: Readonly<Record<string, string>> = {
  "keep-cold":
    "código alimentario modelo de EE. UU. 3-501.14 y 3-501.16 por normas de estados, leído en extractos",
  "milk-stays":
    "código de prácticas de clarificación OIV-SECSAN 520-2014, leído en extracto; composición del suero, de memoria",
  "raw-egg": "práctica común, sin fuente",
  "oil-infusion": "consejos de dos universidades de EE. UU. (de 2 a 10 días; se usa el más corto)",
  overproof: "puntos de inflamación de etanol y agua, tabla pública: 24 °C al 50 %, 22 °C al 60 %",
  grapefruit:
    "un artículo de prensa que cita a la autoridad de alimentos y medicamentos de EE. UU. (CYP3A4)",
  quinine: "21 CFR 172.575, leído en extracto",
  coumarin: "21 CFR 189.130, leído en extracto; EFSA 2008",
  "fresh-juice": "21 CFR 101.17(g) y 120, por una página de seguridad alimentaria",
};
