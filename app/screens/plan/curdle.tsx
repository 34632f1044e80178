import type { Curdling } from "../../../core/acid/curdle.ts";
import type { Fix } from "../../../core/acid/curdle-fix.ts";
import { curdleFigures } from "../../../core/spec/curdle-figures.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { curdlingOf } from "../../../core/spec/plan-curdle.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { Why } from "../../parts/why.tsx";
import { settings } from "../../state.ts";
import { decimals, mass } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { Section } from "./section.tsx";
import { show } from "./show.ts";

const words = sayLater.plan;
const DIRECTIONS = ["moreJuiceMl", "lessDairyMl", "moreBaseMl", "moreAcidG"] as const;

function fixText(direction: (typeof DIRECTIONS)[number], fix: Fix | undefined): string[] {
  if (fix === undefined || fix === "cannot-reach") return [];
  return [words.fixes[direction](direction === "moreAcidG" ? mass(fix) : show(fix))];
}

function Body({ plan, curdling }: { readonly plan: Plan; readonly curdling: Curdling }) {
  const { pH, onset } = curdleFigures(plan, curdling);
  const ways = DIRECTIONS.flatMap((direction) => fixText(direction, curdling.fixes[direction]));
  const style = settings.value;
  return (
    <>
      <dl class="plan-facts">
        <dt>{words.ph}</dt>
        <dd>
          <FigureButton figure={pH} style={style} range />
        </dd>
        {onset !== undefined && (
          <>
            <dt>{words.onset}</dt>
            <dd>
              <FigureButton figure={onset} style={style} />
            </dd>
          </>
        )}
      </dl>
      <Why of="curdle" />
      {ways.length > 0 && (
        <>
          <p>{words.fixIntro}</p>
          <ul class="plan-list">
            {ways.map((way) => (
              <li key={way}>{way}</li>
            ))}
          </ul>
        </>
      )}
      {curdling.notes.map((note) => (
        <p key={note}>{words.curdleNotes[note]}</p>
      ))}
      <p class="plan-quiet">{words.curdleSafety}</p>
    </>
  );
}

/** Whether the punch will curdle its milk, how sure that is, and what would make it sure. */
export function Curdle({ specId, plan }: { readonly specId: string; readonly plan: Plan }) {
  const curdling = curdlingOf(plan);
  if (curdling === undefined) return null;
  const { verdict, low, high } = curdling;
  const says = (
    <>
      <b class="plan-verdict" data-verdict={verdict}>
        {words.verdict[verdict]}
      </b>
      {`, ${words.phBand(decimals(low, 1), decimals(high, 1))}`}
    </>
  );
  return (
    <Section specId={specId} name="curdle" title={words.curdle} says={says}>
      {() => <Body plan={plan} curdling={curdling} />}
    </Section>
  );
}
