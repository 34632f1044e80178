import {
  acidPerLitre,
  type Liquid,
  strengthOf,
  sugarPerLitre,
} from "../../../core/liquid/liquid.ts";
import { sizelessPlan } from "../../../core/spec/sizeless-plan.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { cupboard } from "../../pantry.ts";
import { settings } from "../../state.ts";
import { abv, decimals } from "../../words/format.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { withUnit } from "../../words/with-unit.ts";

const words = sayLater.spec.stands;

const perLitre = (value: number): string => withUnit(decimals(value, 0), "g/L");

function Row({ name, liquid }: { readonly name: string; readonly liquid: Liquid }) {
  const sugar = perLitre(sugarPerLitre(liquid));
  const acid = withUnit(decimals(acidPerLitre(liquid), 1), "g/L");
  return (
    <div>
      <dt>{name}</dt>
      <dd>{words.row(abv(strengthOf(liquid)), sugar, acid)}</dd>
    </div>
  );
}

/** What the drink comes to as typed so far, or what keeps it from being worked out. */
export function Stands({ spec }: { readonly spec: Spec | undefined }) {
  if (spec === undefined) return null;
  const plan = sizelessPlan(spec, cupboard.value, settings.value.ounce);
  return (
    <section class="spec-section">
      <h2>{plan.ok ? words.title : words.cannot}</h2>
      {plan.ok ? (
        <dl class="spec-stages">
          <Row name={words.mixed} liquid={plan.value.mixed} />
          <Row name={words.bottle} liquid={plan.value.final} />
          <Row name={words.glass} liquid={plan.value.served} />
        </dl>
      ) : (
        <p>{sentence(plan)}</p>
      )}
    </section>
  );
}
