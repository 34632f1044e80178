/** As wide as the smallest phone's column: a drawing's words keep their size there. */
export const CHART_WIDTH = 328;

/** A stretch of figures along one side of a drawing. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** From nothing to a little over the most. */
export function fromNothing(figures: readonly number[]): Stretch {
  const most = Math.max(0, ...figures);
  return { from: 0, to: most > 0 ? 1.08 * most : 1 };
}

/** Around all figures, with some air; figures that are all the same stand in the middle. */
export function around(figures: readonly number[]): Stretch {
  const [least, most] = [Math.min(...figures), Math.max(...figures)];
  const air = most > least ? 0.08 * (most - least) : Math.max(Math.abs(most), 1e-9) * 0.1;
  return { from: least - air, to: most + air };
}

/** Where a figure lies between two edges of a drawing. */
export const placed =
  ({ from, to }: Stretch, start: number, end: number) =>
  (figure: number): number =>
    start + ((end - start) * (figure - from)) / (to - from);

/** Places moved apart to at least a gap, in their order, within two edges where there is room. */
export function apart(places: readonly number[], gap: number, edges: Stretch): readonly number[] {
  const order = places.map((place, at) => ({ place, at })).sort((a, b) => a.place - b.place);
  const moved: number[] = [...places];
  let least = edges.from;
  for (const [rank, { place, at }] of order.entries()) {
    // Those still to come need their room below the far edge.
    const most = edges.to - gap * (order.length - 1 - rank);
    const here = Math.max(least, Math.min(place, most));
    moved[at] = here;
    least = here + gap;
  }
  return moved;
}

/** A line through places of a drawing, as the path of an svg. */
export const pathThrough = (places: readonly (readonly [x: number, y: number])[]): string =>
  places.map(([x, y], at) => `${at === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`).join("");
