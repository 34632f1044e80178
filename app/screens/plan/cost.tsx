import { type BatchCost, costOf } from "../../../core/spec/cost.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { usesOf } from "../../../core/spec/plan-use.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { routes } from "../../routes.ts";
import { settings } from "../../state.ts";
import { figureText } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { Section } from "./section.tsx";
import { bound } from "./show.ts";

const words = sayLater.plan.cost;

function says(cost: BatchCost): string {
  if (cost.priced.length === 0) return words.noPrices;
  const style = settings.value;
  const text = words.says(figureText(cost.serve, style), cost.pour && figureText(cost.pour, style));
  return cost.unpriced.length > 0 ? words.atLeast(text) : text;
}

function Figures({ cost, lots }: { readonly cost: BatchCost; readonly lots: number }) {
  const style = settings.value;
  return (
    <dl class="plan-facts">
      <dt>{words.serve}</dt>
      <dd>
        <FigureButton figure={cost.serve} style={style} />
      </dd>
      <dt>{lots > 1 ? words.lot : words.batch}</dt>
      <dd>
        <FigureButton figure={cost.batch} style={style} />
      </dd>
      {cost.pour !== undefined && (
        <>
          <dt>{words.pour}</dt>
          <dd>
            <FigureButton figure={cost.pour} style={style} />
          </dd>
        </>
      )}
    </dl>
  );
}

/** What has no price, each with the way to where it can get one. */
function Unpriced({ plan, cost }: { readonly plan: Plan; readonly cost: BatchCost }) {
  const without = usesOf(plan).filter(
    ({ ml, g, ingredient }) => (ml > 0 || g > 0) && ingredient?.price === undefined,
  );
  if (without.length === 0) return null;
  return (
    <>
      <p>{cost.priced.length > 0 ? words.unpriced : words.nonePriced}</p>
      <ul class="plan-links">
        {without.map(({ id, name }) => (
          <li key={id}>
            <a href={routes.ingredient(id)}>{bound(name)}</a>
          </li>
        ))}
      </ul>
    </>
  );
}

/** What the batch and a serve cost, as far as there are prices. */
export function Cost(props: { specId: string; plan: Plan; lots: number }) {
  const { specId, plan, lots } = props;
  const cost = costOf(plan);
  return (
    <Section specId={specId} name="cost" title={words.title} says={says(cost)}>
      {() => (
        <>
          {cost.priced.length > 0 && <Figures cost={cost} lots={lots} />}
          <Unpriced plan={plan} cost={cost} />
          {cost.pour === undefined && (
            <p>
              {words.noMenuPrice} <a href={routes.spec(specId)}>{words.setMenuPrice}</a>
            </p>
          )}
          <p class="plan-quiet">{words.ingredientsOnly}</p>
        </>
      )}
    </Section>
  );
}
