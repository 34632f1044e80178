/** Liquid that a drained botanical keeps, ml per g as it went in. */
export interface Absorption {
  readonly usual: number;
  readonly low: number;
  readonly high: number;
}

/**
 * What botanicals keep once they are strained, ml per g; to be put into an ingredient and corrected
 * by what the house measures. From the project's reference notes, read 2026-11-25. Coffee: 2.0 to
 * 2.5, two trade pages, stored excerpts. All others from memory, about half as much either way.
 */
export const ABSORPTIONS = {
  coffee: { usual: 2.1, low: 2, high: 2.5 },
  tea: { usual: 3, low: 2, high: 4 },
  spice: { usual: 1, low: 0.5, high: 1.5 },
  herb: { usual: 0.8, low: 0.3, high: 1.5 },
  nibs: { usual: 0.9, low: 0.6, high: 1.3 },
  peel: { usual: 0.6, low: 0.3, high: 1 },
} as const satisfies Readonly<Record<string, Absorption>>;
