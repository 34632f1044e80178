import { useRef } from "preact/hooks";
import type { Figure } from "../../core/quantity/figure.ts";
import { figureText, type VolumeStyle } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import "./figure-button.css";

interface FigureProps {
  readonly figure: Figure;
  readonly style: VolumeStyle;
}

const nameOf = (figure: Figure): string => sayLater.plan.names[figure.name] ?? figure.name;

/** One level of a derivation: what went in, and by which rule. */
function Working({ figure, style }: FigureProps) {
  const { rule, from, within } = figure;
  const words = sayLater.plan;
  return (
    <>
      <h3>{nameOf(figure)}</h3>
      <p class="figure-button-value">
        {figureText(figure, style)}
        {within !== undefined &&
          ` ${words.within(figureText({ ...figure, value: within }, style))}`}
      </p>
      <dl class="figure-button-working">
        {from.length > 0 && (
          <>
            <dt>{words.from}</dt>
            {from.map((one) => (
              <dd key={one.name}>
                {nameOf(one)}: {figureText(one, style)}
              </dd>
            ))}
          </>
        )}
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
    </>
  );
}

/** A number that opens to show how it was worked out. */
export function FigureButton(props: FigureProps & { readonly bare?: boolean }) {
  const { figure, style, bare = false } = props;
  const sheet = useRef<HTMLDialogElement>(null);
  return (
    <>
      <button type="button" class="figure-button" onClick={() => sheet.current?.showModal()}>
        {figureText(figure, style, bare)}
      </button>
      <dialog class="figure-button-sheet" ref={sheet} aria-label={sayLater.plan.working}>
        <h2>{sayLater.plan.working}</h2>
        <Working figure={figure} style={style} />
        <form method="dialog">
          <button type="submit" class="figure-button-close">
            {sayLater.plan.close}
          </button>
        </form>
      </dialog>
    </>
  );
}
