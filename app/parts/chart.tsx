import type { ComponentChildren } from "preact";
import { CHART_WIDTH } from "./chart-scale.ts";
import "./chart.css";

/** The figures of a drawing, as a table. */
export interface ChartFigures {
  readonly caption: string;
  readonly head: readonly string[];
  /** The first of each row names it. */
  readonly rows: readonly (readonly string[])[];
}

export interface ChartFrameProps {
  /** What it shows, as a sentence: what a person who hears it is told. */
  readonly says: string;
  /** How to read it. */
  readonly reading: string;
  readonly figures: ChartFigures;
  /** What opens the table. */
  readonly open: string;
  readonly height: number;
  readonly children: ComponentChildren;
}

function Table({ caption, head, rows }: ChartFigures) {
  return (
    <table class="chart-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          {head.map((one) => (
            <th key={one} scope="col">
              {one}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name = "", ...cells], at) => (
          <tr key={at}>
            <th scope="row">{name}</th>
            {cells.map((cell, column) => (
              <td key={column}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A drawing with what it says in words, and all of its figures for those who open them. */
export function ChartFrame(props: ChartFrameProps) {
  const { says, reading, figures, open, height, children } = props;
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${CHART_WIDTH} ${height}`} role="img" aria-label={says}>
        {children}
      </svg>
      <figcaption>
        <p>{says}</p>
        <p class="chart-reading">{reading}</p>
      </figcaption>
      <details class="chart-figures">
        <summary>{open}</summary>
        <Table {...figures} />
      </details>
    </figure>
  );
}
