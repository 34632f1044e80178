import type { BandLook } from "../../core/board/glass.ts";

/**
 * The geometry of the column: pure, in the units of the picture's own view box. Nothing here is
 * random: grains are placed by counting, so the same run is drawn the same way every time.
 */

/** What a layer looks like to someone standing at the bench. */
export type Look = BandLook;
/** Where the picture stands: in the Bench list, filling a run screen, or beside a word. */
export type ColumnSize = "rack" | "run" | "chip";
/** One layer and its share of the glass height, 0 to 1. */
export interface Layer {
  readonly look: Look;
  readonly share: number;
}
/** Where the liquid will reach, 0 to 1, and how sure we are. */
export interface ReachLine {
  readonly share: number;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

/** Inner walls, rim and floor of a glass; `unit` is the pen: 1 in the rack. */
export interface Glass {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly rim: number;
  readonly floor: number;
  readonly unit: number;
}

export const GLASS: Readonly<Record<ColumnSize, Glass>> = {
  rack: { width: 72, height: 200, left: 13, right: 59, rim: 29, floor: 185, unit: 1 },
  run: { width: 132, height: 400, left: 24, right: 108, rim: 52, floor: 374, unit: 1.7 },
  chip: { width: 28, height: 72, left: 5, right: 23, rim: 15, floor: 64, unit: 0.55 },
};

const AMBER: ReadonlySet<Look> = new Set(["hazy", "clear", "spirit", "punch"]);
/** A full glass stops this far below the rim, in units. */
const LIP = 6;

const tidy = (x: number): number => Math.round(x * 100) / 100;
const within = (x: number): number => (x > 0 ? Math.min(x, 1) : 0);

/** Height above which a share of the glass stands, as a y; a share that is no number is nothing. */
export function levelOf(share: number, glass: Glass): number {
  const brim = glass.rim + LIP * glass.unit;
  return tidy(glass.floor - within(share) * (glass.floor - brim));
}

/** A layer as drawn: its surface at `y`, and a key that stays with it as layers come and go. */
export interface Slab {
  readonly look: Look;
  readonly key: string;
  readonly y: number;
}

/**
 * Layers as slabs, the top one first: each is drawn down to the floor and the next covers it, so
 * that a rising layer only ever moves. More than a glassful keeps its proportions and fills it.
 */
export function slabsOf(layers: readonly Layer[], glass: Glass): readonly Slab[] {
  const shown = layers.filter((layer) => within(layer.share) > 0);
  const total = shown.reduce((sum, layer) => sum + layer.share, 0);
  const fit = total > 1 ? 1 / total : 1;
  let top = 0;
  const slabs = shown.map(({ look, share }, at) => {
    top += share * fit;
    const nth = shown.slice(0, at).filter((below) => below.look === look).length;
    return { look, key: `${look}${nth}`, y: levelOf(top, glass) };
  });
  return slabs.reverse();
}

/** Where a drop lands: on the clear drink under whatever stands on it, else on the top surface. */
export function landingOf(slabs: readonly Slab[], glass: Glass): number {
  const rising = slabs.filter((_, at) => slabs.slice(at).every(({ look }) => AMBER.has(look)));
  return (rising[0] ?? slabs[0])?.y ?? glass.floor;
}

/** The inside of the glass, rounded at the floor; liquid is cut to it. */
export function insideOf({ left, right, rim, floor, unit }: Glass): string {
  const bend = 4 * unit;
  return `M${left} ${rim}V${tidy(floor - bend)}q0 ${bend} ${bend} ${bend}H${tidy(right - bend)}q${bend} 0 ${bend} ${-bend}V${rim}z`;
}

/** The thick foot under the liquid, a little wider than the column. */
export function footOf({ left, right, floor, height, unit }: Glass): string {
  const [wall, flare, bend] = [1.5 * unit, 4.5 * unit, 2 * unit];
  const [waist, heel] = [tidy(floor + 3 * unit), tidy(height - 4 * unit)];
  return (
    `M${tidy(left - wall)} ${tidy(floor - 6 * unit)}V${waist}L${tidy(left - flare)} ${heel}` +
    `q0 ${bend} ${bend} ${bend}H${tidy(right + flare - bend)}` +
    `q${bend} 0 ${bend} ${-bend}L${tidy(right + wall)} ${waist}V${tidy(floor - 6 * unit)}`
  );
}

/** The glass from outside: lip, straight wall, foot, wall, lip. */
export function wallOf(glass: Glass): string {
  const { left, rim, unit } = glass;
  const [wall, lip] = [1.5 * unit, 2 * unit];
  return (
    `M${tidy(left - wall - lip)} ${rim}q${lip} ${unit} ${lip} ${5 * unit}` +
    `${footOf(glass).replace("M", "L")}` +
    `V${tidy(rim + 5 * unit)}q0 ${-4 * unit} ${lip} ${-5 * unit}`
  );
}

/** The top edge of a layer, from wall to wall about y = 0: lumps, ripples, or a meniscus. */
export function surfaceOf(look: Look, { left, right, unit }: Glass): string {
  const width = right - left;
  if (look === "curd") {
    const lumps = [0.19, 0.26, 0.16, 0.23, 0.16].map((share) => tidy(share * width));
    return `M${left} 0${lumps.map((w) => `a${tidy(w / 2)} ${tidy(w / 2.6)} 0 0 1 ${w} 0`).join("")}`;
  }
  if (look === "punch") {
    const half = tidy(width / 6);
    const [rise, fall] = [-3.2 * unit, 3.2 * unit].map(tidy);
    return `M${left} 0${[rise, fall, rise, fall, rise, fall].map((h) => `q${tidy(half / 2)} ${h} ${half} 0`).join("")}`;
  }
  const [up, in_] = [tidy(-2.5 * unit), tidy(4 * unit)];
  return `M${left} ${up}q0 ${-up} ${in_} ${-up}H${tidy(right - in_)}q${in_} 0 ${in_} ${up}`;
}

/** 1/p and 1/p^2, p the plastic number: points that spread evenly and never fall into a grid. */
const ACROSS = 0.7548776662;
const DOWN = 0.569840291;
const GOLDEN_ANGLE = 2.39996;

/**
 * A path of `count` points spread over a tile that repeats downwards; under a round pen each is a
 * dot. `stray` moves every point that far in a turning direction, which makes the dots clump.
 * @source M. Roberts, "The unreasonable effectiveness of quasirandom sequences", 2018 (R2); from memory
 */
function grains(count: number, width: number, pen: number, tall: number, stray = 0): string {
  let path = "";
  for (let at = 1; at <= count; at++) {
    const turn = at * GOLDEN_ANGLE;
    const x = ((at * ACROSS) % 1) * width + stray * Math.cos(turn);
    const y = (((at * DOWN) % 1) * tall + stray * Math.sin(turn) + tall) % tall;
    // What crosses the tile's edge shows again at the other, or the repeat would cut it.
    const copies = [y, ...(y < pen ? [y + tall] : []), ...(y > tall - pen ? [y - tall] : [])];
    path += copies.map((to) => `M${tidy(x)} ${tidy(to)}h.01`).join("");
  }
  return path;
}

function rows(tall: number, pitch: number, row: (y: number) => string): string {
  return Array.from({ length: Math.round(tall / pitch) }, (_, at) => row(tidy(at * pitch))).join(
    "",
  );
}

/** One stroke of a texture: what it is, its path on the tile, and the width of its pen. */
interface Mark {
  readonly kind: "gap" | "grain" | "fleck" | "mote" | "glint" | "hatch" | "ripple";
  readonly d: string;
  readonly pen: number;
}

/** Height of a texture's tile; it is as wide as the glass, so only the repeat downwards must fit. */
export const tileOf = ({ unit }: Glass): number => 72 * unit;

/** The strokes that tell a look by texture alone; smooth milk has none. */
export function marksOf(look: Look, glass: Glass): readonly Mark[] {
  const { unit } = glass;
  const width = glass.right - glass.left;
  const tall = tileOf(glass);
  const dots = (pitch: number, pen: number, stray = 0) =>
    grains(Math.round((width * tall) / (pitch * unit) ** 2), width, pen, tall, stray * unit);
  switch (look) {
    case "curd": {
      const [big, small] = [dots(9.5, 12, 2), dots(9.5, 12, 5.5)];
      return [
        { kind: "gap", d: big, pen: 11 * unit },
        { kind: "gap", d: small, pen: 8.5 * unit },
        { kind: "grain", d: big, pen: 8.8 * unit },
        { kind: "grain", d: small, pen: 6.3 * unit },
      ];
    }
    case "cloudy":
      return [{ kind: "fleck", d: dots(4.6, 2, 1.2), pen: 2 * unit }];
    case "hazy":
      return [{ kind: "mote", d: dots(9.5, 4, 2), pen: 3.2 * unit }];
    case "clear":
      // Light that enters on the left of a full glass gathers near its right wall.
      return [{ kind: "glint", d: `M${tidy(width - 8 * unit)} 0v${tall}`, pen: 5 * unit }];
    case "spirit": {
      const lean = (y: number) => `M0 ${y}L${width} ${tidy(y - width)}`;
      return [{ kind: "hatch", d: rows(tall + width, 8 * unit, lean), pen: 2 * unit }];
    }
    case "punch": {
      const [quarter, rise] = [tidy(width / 4), tidy(-3.2 * unit)];
      const wave = (y: number) =>
        `M0 ${tidy(y + 4 * unit)}q${tidy(quarter / 2)} ${rise} ${quarter} 0t${quarter} 0t${quarter} 0t${quarter} 0`;
      return [{ kind: "ripple", d: rows(tall, 8 * unit, wave), pen: 2 * unit }];
    }
    case "milk":
      return [];
  }
}
