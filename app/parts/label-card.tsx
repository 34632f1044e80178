import type { Mark } from "../../core/label/set-part.ts";
import { type CodeRows, codePath } from "../label/code.ts";
import type { Drawn, Page } from "../label/drawn.ts";
import "./label-card.css";

/** Drawn in tenths of a mm: browsers hold type up that looks too small to them. */
const SCALE = 10;

function Code({ mark, code }: { mark: Extract<Mark, { type: "code" }>; code: CodeRows }) {
  const module = (mark.side * SCALE) / code.length;
  const place = `translate(${mark.x * SCALE} ${mark.y * SCALE}) scale(${module})`;
  return <path class="label-card-code" d={codePath(code)} transform={place} />;
}

function Drawing({ mark, code }: { readonly mark: Mark; readonly code: CodeRows }) {
  const [x, y] = [mark.x * SCALE, mark.y * SCALE];
  switch (mark.type) {
    case "text":
      return (
        <text
          class="label-card-text"
          x={x}
          y={y}
          font-size={mark.size * SCALE}
          font-weight={mark.strong ? "bold" : "normal"}
          textLength={mark.width * SCALE}
          lengthAdjust="spacingAndGlyphs"
        >
          {mark.text}
        </text>
      );
    case "box":
    case "rule": {
      const [width, height] = [mark.width * SCALE, mark.height * SCALE];
      const path =
        height === 0 ? `M${x} ${y}h${width}` : `M${x} ${y}h${width}v${height}h-${width}z`;
      return <path class="label-card-line" d={path} stroke-width={mark.line * SCALE} />;
    }
    case "code":
      return <Code mark={mark} code={code} />;
  }
}

function Marks({ label }: { readonly label: Drawn }) {
  return (
    <>
      {label.layout.marks.map((mark, index) => (
        <Drawing key={index} mark={mark} code={label.code} />
      ))}
    </>
  );
}

/** A label on the screen, as it prints. */
export function LabelCard({ label, name }: { readonly label: Drawn; readonly name: string }) {
  const { width, height } = label;
  return (
    <svg
      class="label-card"
      viewBox={`0 0 ${width * SCALE} ${height * SCALE}`}
      role="img"
      aria-label={`${name}. ${label.text}`}
    >
      <Marks label={label} />
    </svg>
  );
}

/** A page for the printer, at its size; hidden on the screen. */
export function LabelPage({ page }: { readonly page: Page }) {
  return (
    <div class="label-card-page">
      <svg
        width={`${page.width}mm`}
        height={`${page.height}mm`}
        viewBox={`0 0 ${page.width * SCALE} ${page.height * SCALE}`}
        aria-hidden="true"
      >
        {page.labels.map(({ label, x, y }) => (
          <g key={`${x} ${y}`} transform={`translate(${x * SCALE} ${y * SCALE})`}>
            <Marks label={label} />
          </g>
        ))}
      </svg>
    </div>
  );
}

/** A sheet in small: which places are printed on, and which were used before. */
export function SheetMap({ page, name }: { readonly page: Page; readonly name: string }) {
  return (
    <svg
      class="label-card-map"
      viewBox={`0 0 ${page.width} ${page.height}`}
      role="img"
      aria-label={name}
    >
      {page.labels.map(({ label, x, y }) => (
        <rect
          key={`${x} ${y}`}
          class="label-card-place"
          x={x + 1}
          y={y + 1}
          width={label.width - 2}
          height={label.height - 2}
        />
      ))}
    </svg>
  );
}
