import type { Tongue } from "../tongue.ts";

/** Each reads back as the same unit: see the core's table of measures. */
export const units: Tongue["units"] = {
  dash: ["trait", "traits"],
  drop: ["goutte", "gouttes"],
  barspoon: ["cuillère", "cuillères"],
  tsp: ["càc", "càc"],
  tbsp: ["càs", "càs"],
  cup: ["tasse", "tasses"],
  pint: ["pinte", "pintes"],
  quart: ["quart", "quarts"],
  gallon: ["gallon", "gallons"],
};
