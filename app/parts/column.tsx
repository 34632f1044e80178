import { useId, useMemo } from "preact/hooks";
import type { ColumnSize, Glass, Layer, Look, ReachLine, Slab } from "./column-shape.ts";
import {
  footOf,
  GLASS,
  insideOf,
  landingOf,
  levelOf,
  marksOf,
  slabsOf,
  surfaceOf,
  tileOf,
  wallOf,
} from "./column-shape.ts";
import "./column.css";

export interface ColumnProps {
  /** Bottom first. */
  readonly layers: readonly Layer[];
  readonly line?: ReachLine | undefined;
  readonly mood: "still" | "waiting" | "due";
  readonly label: string;
  readonly size: ColumnSize;
}

// A style object is set through the CSSOM, which a strict content policy allows; `style="..."` is not.
const at = (y: number) => ({ transform: `translateY(${y}px)` });

/** Texture and body of one look, made once: a tick that changes nothing redraws nothing. */
function Texture({ look, glass, id }: { look: Look; glass: Glass; id: string }) {
  return useMemo(
    () => (
      <pattern
        id={`${id}${look}`}
        patternUnits="userSpaceOnUse"
        x={glass.left}
        y={0}
        width={glass.right - glass.left}
        height={tileOf(glass)}
      >
        {marksOf(look, glass).map(({ kind, d, pen }) => (
          <path key={`${kind}${pen}`} class={`column-${kind}`} d={d} stroke-width={pen} />
        ))}
      </pattern>
    ),
    [look, glass, id],
  );
}

const bodyOf = ({ look }: Slab, glass: Glass) =>
  `${surfaceOf(look, glass)}V${glass.height}H${glass.left}z`;

function Liquid({ slab, glass, id }: { slab: Slab; glass: Glass; id: string }) {
  const body = bodyOf(slab, glass);
  return (
    <g class={`column-liquid column-${slab.look}`} style={at(slab.y)}>
      <path class="column-body" d={body} />
      <path d={body} fill={`url(#${id}${slab.look})`} />
      <path class="column-edge" d={surfaceOf(slab.look, glass)} stroke-width={1.5 * glass.unit} />
    </g>
  );
}

/** Where the drip will end: a line through the glass, a pointer beside it, a bar for how sure. */
function Reach({ line, glass }: { line: ReachLine; glass: Glass }) {
  const { left, right, unit: u } = glass;
  const through = `M${left - 5 * u} 0H${right + 3 * u}`;
  const lowest = levelOf(line.low ?? line.share, glass);
  const highest = levelOf(line.high ?? line.share, glass);
  const bar = right + 10 * u;
  return (
    <g>
      {lowest > highest && u >= 1 && (
        <path
          class="column-band"
          d={`M${bar - 3 * u} ${highest}h${3 * u}V${lowest}h${-3 * u}`}
          stroke-width={2 * u}
        />
      )}
      <g class="column-reach" style={at(levelOf(line.share, glass))}>
        <path class="column-reach-halo" d={through} stroke-width={4.4 * u} />
        <path
          class="column-reach-line"
          d={through}
          stroke-width={2 * u}
          stroke-dasharray={`${6 * u} ${2.5 * u}`}
        />
        <path class="column-reach-tip" d={`M${right + 2 * u} 0l${6 * u} ${-5 * u}v${10 * u}z`} />
      </g>
    </g>
  );
}

/** Something is on its way without you: a drop gathers above the glass and falls to its level. */
function Drip({ glass, landing }: { glass: Glass; landing: number }) {
  const { left, right, rim, unit } = glass;
  const hang = rim - 15 * unit;
  const fall = (landing - hang) / unit - 8;
  return (
    <g transform={`translate(${(left + right) / 2} ${hang}) scale(${unit})`}>
      <path class="column-spout" d="M-15-11H15L3-3v2h-6v-2z" />
      <g class="column-drop" style={{ "--column-fall": `${fall}px` }}>
        <path
          class="column-bead"
          d="M0 .5c1.5 3.5 4.4 5.6 4.4 8.6a4.4 4.4 0 0 1-8.8 0c0-3 2.9-5.1 4.4-8.6z"
        />
      </g>
    </g>
  );
}

/** Due now: the same place above the glass, another shape. */
function Flag({ glass }: { glass: Glass }) {
  const { right, rim, unit } = glass;
  return (
    <g transform={`translate(${right + 1.5 * unit} ${rim}) scale(${unit})`}>
      <path class="column-staff" d="M0 0v-25" />
      <path class="column-flag" d="M0-25h-40l6 8-6 8H0z" />
    </g>
  );
}

/** A run as people see it from across the room: a tall glass holding what it holds now. */
export function Column({ layers, line, mood, label, size }: ColumnProps) {
  const id = useId();
  const glass = GLASS[size];
  const { width, height, left, rim, floor, unit } = glass;
  const slabs = slabsOf(layers, glass);
  const [top] = slabs;
  const looks = [...new Set(slabs.map(({ look }) => look))];
  const [inside, wall] = [insideOf(glass), wallOf(glass)];
  return (
    <svg
      class={`column column-${size} column-${mood}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={label}
    >
      <defs>
        <clipPath id={`${id}in`}>
          <path d={inside} />
        </clipPath>
        <linearGradient id={`${id}round`}>
          <stop class="column-shade" offset="0" />
          <stop class="column-shade-none" offset=".3" />
          <stop class="column-shade-none" offset=".62" />
          <stop class="column-shade" offset="1" />
        </linearGradient>
        {looks.map((look) => (
          <Texture key={look} look={look} glass={glass} id={id} />
        ))}
      </defs>
      {mood === "due" && <path class="column-halo" d={`${wall}z`} stroke-width={9 * unit} />}
      <path class={`column-foot column-${slabs.at(-1)?.look ?? "none"}`} d={footOf(glass)} />
      <path class="column-air" d={inside} />
      <g clip-path={`url(#${id}in)`}>
        {slabs.map((slab) => (
          <Liquid key={slab.key} slab={slab} glass={glass} id={id} />
        ))}
        {top && (
          <path
            d={bodyOf(top, glass)}
            fill={`url(#${id}round)`}
            style={at(top.y)}
            class="column-round"
          />
        )}
      </g>
      <path
        class="column-shine"
        d={`M${left + 7 * unit} ${rim + 12 * unit}V${floor - 16 * unit}`}
        stroke-width={2.6 * unit}
      />
      <path class="column-wall" d={wall} stroke-width={2.6 * unit} />
      {line && <Reach line={line} glass={glass} />}
      {mood === "waiting" && <Drip glass={glass} landing={landingOf(slabs, glass)} />}
      {mood === "due" && <Flag glass={glass} />}
    </svg>
  );
}
