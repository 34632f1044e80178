import { useState } from "preact/hooks";
import type { Figure } from "../../core/quantity/figure.ts";
import { withinText } from "../words/change-text.ts";
import { type FigureStyle, figureText } from "../words/format.ts";
import { named } from "../words/joined.ts";
import { ruleText } from "../words/rule-text.ts";
import { sayLater } from "../words/say-later.ts";
import { Opened } from "./opened.tsx";
import "./figure-button.css";

interface FigureProps {
  readonly figure: Figure;
  readonly style: FigureStyle;
}

const nameOf = (figure: Figure): string => sayLater.plan.names[figure.name] ?? figure.name;

function Input({ figure, style }: FigureProps) {
  const row = (
    <>
      <span>{nameOf(figure)}</span>
      <b>{figureText(figure, style)}</b>
    </>
  );
  if (figure.rule.formula === "") return <p class="figure-button-row">{row}</p>;
  return (
    <details class="figure-button-input">
      <summary class="figure-button-row">{row}</summary>
      <Rule figure={figure} style={style} />
    </details>
  );
}

/** By which rule a number came about, and from what; each input opens in its turn. */
function Rule({ figure, style }: FigureProps) {
  const { from } = figure;
  const rule = ruleText(figure.rule);
  const words = sayLater.plan;
  const explained = words.rules[rule.key];
  return (
    <div class="figure-button-rule">
      {explained !== undefined && <p>{explained}</p>}
      {from.map((one, at) => (
        <Input key={`${one.name} ${at}`} figure={one} style={style} />
      ))}
      <dl class="figure-button-facts">
        {rule.formula !== "" && (
          <>
            <dt>{words.formula}</dt>
            <dd>{rule.formula}</dd>
          </>
        )}
        <dt>{words.source}</dt>
        <dd>{rule.source}</dd>
        {rule.limits !== undefined && (
          <>
            <dt>{words.limits}</dt>
            <dd>{rule.limits}</dd>
          </>
        )}
      </dl>
    </div>
  );
}

function Sheet({ figure, style, onClose }: FigureProps & { readonly onClose: () => void }) {
  const within = withinText(figure, style);
  const words = sayLater.plan;
  const name = nameOf(figure);
  return (
    <Opened title={name} name={named(words.working, name)} onClose={onClose}>
      <p class="figure-button-value">
        {figureText(figure, style)}
        {within !== undefined && <span> {words.within(within)}</span>}
      </p>
      <Rule figure={figure} style={style} />
    </Opened>
  );
}

export interface FigureButtonProps extends FigureProps {
  /** Leaves the unit to the heading. */
  readonly bare?: boolean;
  /** Shows its likely range beside it. */
  readonly range?: boolean;
}

/** A number that opens to show how it was worked out. */
export function FigureButton({ figure, style, bare = false, range = false }: FigureButtonProps) {
  const [open, setOpen] = useState(false);
  const within = range ? withinText(figure, style, true) : undefined;
  return (
    <>
      <button type="button" class="figure-button" onClick={() => setOpen(true)}>
        <span class="figure-button-number">{figureText(figure, style, bare)}</span>
        {within !== undefined && <small class="figure-button-within"> ±{within}</small>}
      </button>
      {open && <Sheet figure={figure} style={style} onClose={() => setOpen(false)} />}
    </>
  );
}
