import { usualDrip } from "../../../core/method/drip/usual-drip.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { routes } from "../../routes.ts";
import { decimals, duration } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { show } from "./show.ts";

const whole = (value: number): string => decimals(value, 0);

/** The slow drip by the house's own batches; nothing where it has learnt none. */
function Drip({ plan }: { readonly plan: Plan }) {
  const { yield: expected, spec } = plan;
  if (expected?.drip === undefined) return null;
  const { times, low, high, batches } = expected.drip;
  const usual = usualDrip(expected.expected, spec.wash?.filters ?? 1);
  const text = (factor: number): string => duration(usual * factor);
  return <p>{sayLater.learnt.plan.drip(text(times), text(low), text(high), whole(batches))}</p>;
}

/** What should come through, and whether that is practice or the house's own batches. */
export function Through({ plan }: { readonly plan: Plan }) {
  const { yield: expected } = plan;
  if (expected === undefined) return null;
  const words = sayLater.learnt.plan;
  const { low, high, from, batches } = expected;
  const amounts = [show(expected.expected), show(low), show(high)] as const;
  return (
    <div class="plan-fit">
      <p>
        {from === "own-batches"
          ? words.own(...amounts, whole(batches))
          : words.practice(...amounts)}
      </p>
      <Drip plan={plan} />
      {from === "own-batches" && <a href={routes.learntOf(plan.spec.id)}>{words.link}</a>}
    </div>
  );
}
