import type { Result } from "../../../core/quantity/result.ts";
import type { Lots, LotsRefusal } from "../../../core/spec/lots.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { fillFigure, servesFigure } from "../../../core/spec/plan-figures.ts";
import { balanceOf } from "../../../core/spec/stages.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { settings } from "../../state.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { setDesk } from "./kept.ts";
import { show } from "./show.ts";

const words = sayLater.plan;

/** What the whole batch comes to; the serves only where they were not what was asked for. */
export function Makes({ plan }: { readonly plan: Plan }) {
  const style = settings.value;
  return (
    <p class="plan-makes">
      <FigureButton figure={balanceOf("topped-up", plan.final).volume} style={style} />
      <span>{words.inTheBottle}</span>
      {plan.size.by !== "serves" && (
        <>
          <FigureButton figure={servesFigure(plan)} style={style} />
          <span>{words.pours(show(plan.spec.serve.pour))}</span>
        </>
      )}
    </p>
  );
}

interface FitProps {
  readonly specId: string;
  /** The whole batch. */
  readonly plan: Plan;
  readonly lots: Result<Lots, LotsRefusal>;
  readonly choice: "one" | "all";
}

/** Whether punch and milk fit the largest vessel, and the equal lots they can be made in. */
export function Fit({ specId, plan, lots, choice }: FitProps) {
  const fill = show(fillFigure(plan).value);
  const vessel = show(settings.value.vessel);
  const { vessel: says } = words;
  const change = <a href={routes.kit}>{says.change}</a>;
  if (lots.ok && lots.value.count === 1) {
    return (
      <p class="plan-fit">
        {says.fits(fill, vessel)} {change}
      </p>
    );
  }
  if (!lots.ok) {
    return (
      <p class="plan-say" role="status">
        {says.tooMuch(fill, vessel)} {sentence(lots)} {change}
      </p>
    );
  }
  const { count, plan: lot } = lots.value;
  return (
    <div class="plan-say" role="status">
      <p>
        {says.tooMuch(fill, vessel)} <b>{says.lots(count, show(fillFigure(lot).value))}</b> {change}
      </p>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset takes no grid layout in older Safari */}
      <div class="plan-switch" role="group" aria-label={says.choice}>
        {(["one", "all"] as const).map((one) => (
          <TapButton
            key={one}
            size="least"
            pressed={choice === one}
            onAct={() => setDesk(specId, { lots: one })}
          >
            {one === "one" ? says.one(count) : says.all}
          </TapButton>
        ))}
      </div>
    </div>
  );
}
