import type { Tongue } from "../tongue.ts";

/** A figure as a country writes it, with a comma for thousands and a point for tenths. */
const POINT = /^1,234,567\.5$/u;

/**
 * Spanish as the phone's own country writes figures: from Mexico to Peru with a point, elsewhere with a
 * comma as in Spain. The browser knows which (its copy of Unicode CLDR); days stay as they are.
 */
export function inCountry(spanish: Tongue, tags: readonly string[]): Tongue {
  const tag = tags.find((one) => /^es-/iu.test(one));
  if (tag === undefined) return spanish;
  const figures = new Intl.NumberFormat(tag);
  return POINT.test(figures.format(1_234_567.5))
    ? { ...spanish, figures: tag, numbers: "1,000.5", signFirst: true }
    : spanish;
}
