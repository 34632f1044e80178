import type { Fix } from "../../../core/acid/curdle-fix.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { curdlingOf } from "../../../core/spec/plan-curdle.ts";
import { settings } from "../../state.ts";
import { decimals, mass, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const DIRECTIONS = ["moreJuiceMl", "lessDairyMl", "moreBaseMl", "moreAcidG"] as const;

function fixText(direction: (typeof DIRECTIONS)[number], fix: Fix | undefined): string[] {
  if (fix === undefined || fix === "cannot-reach") return [];
  const amount = direction === "moreAcidG" ? mass(fix) : volume(fix, settings.value);
  return [sayLater.plan.fixes[direction](amount)];
}

/** Whether the punch will curdle its milk, how sure that is, and what would make it sure. */
export function Curdle({ plan }: { readonly plan: Plan }) {
  const curdling = curdlingOf(plan);
  if (curdling === undefined) return null;
  const words = sayLater.plan;
  const { verdict, low, high, onset, notes, fixes } = curdling;
  const ways = DIRECTIONS.flatMap((direction) => fixText(direction, fixes[direction]));
  return (
    <section class="plan-part plan-curdle" data-verdict={verdict}>
      <h2>{words.curdle}</h2>
      <p class="plan-big">{words.verdict[verdict]}</p>
      {onset !== null && <p>{words.ph(decimals(low, 1), decimals(high, 1), decimals(onset, 1))}</p>}
      {notes.map((note) => (
        <p key={note}>{words.curdleNotes[note]}</p>
      ))}
      {ways.length > 0 && (
        <>
          <p>{words.fixIntro}</p>
          <ul>
            {ways.map((way) => (
              <li key={way}>{way}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
