import type { Tongue } from "../tongue.ts";

/** Each reads back as the same unit: see the core's table of measures. */
export const units: Tongue["units"] = {
  dash: ["golpe", "golpes"],
  drop: ["gota", "gotas"],
  barspoon: ["cucharilla", "cucharillas"],
  tsp: ["cdta", "cdtas"],
  tbsp: ["cda", "cdas"],
  cup: ["taza", "tazas"],
  pint: ["pinta", "pintas"],
  quart: ["cuarto", "cuartos"],
  gallon: ["galón", "galones"],
};
