/** Where each caution comes from, and how well it was read. */
export const sources: Readonly<Record<string, string>> = {
  "keep-cold": "US model food code 3-501.14 and 3-501.16 by way of state rules, read as excerpts",
  "milk-stays":
    "code of fining practice OIV-SECSAN 520-2014, read as an excerpt; make-up of whey from memory",
  "raw-egg": "common practice, no source",
  "oil-infusion": "extension advice of two US universities (2 to 10 days; the shortest is used)",
  overproof: "flash points of ethanol and water, a public table: 24 °C at 50 %, 22 °C at 60 %",
  grapefruit: "a press piece quoting the US food and drug authority (CYP3A4)",
  quinine: "21 CFR 172.575, read as an excerpt",
  coumarin: "21 CFR 189.130, read as an excerpt; EFSA 2008",
  "fresh-juice": "21 CFR 101.17(g) and 120, by way of a food safety page",
};
