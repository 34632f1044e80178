import { FREEZER, FREEZER_SWING, stateAt } from "../../../core/liquid/freezing.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { freezingFigure, glassFigures } from "../../../core/spec/plan-figures.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { settings } from "../../state.ts";
import { figureText } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { Section } from "./section.tsx";

const words = sayLater.plan.cold;

/** What becomes of the bottle in a freezer, and the sentence that goes with it. */
function bottleIn(begins: number): {
  readonly how: "freezes" | "close" | "stays";
  readonly note?: string;
} {
  if (begins > FREEZER + FREEZER_SWING) return { how: "freezes", note: words.freezesNote };
  if (begins > FREEZER - FREEZER_SWING) return { how: "close", note: words.closeNote };
  return { how: "stays" };
}

function Bottle({ plan }: { readonly plan: Plan }) {
  const begins = freezingFigure(plan);
  if (begins === undefined) return <p>{words.noWater}</p>;
  const { how, note } = bottleIn(begins.value);
  return (
    <>
      <dl class="plan-facts">
        <dt>{words.bottle}</dt>
        <dd>{words.in[how]}</dd>
        <dt>{words.begins}</dt>
        <dd>
          <FigureButton figure={begins} style={settings.value} />
        </dd>
      </dl>
      {note !== undefined && <p class="plan-quiet">{note}</p>}
    </>
  );
}

function textureOf(plan: Plan) {
  return plan.served.water > 0 ? stateAt(plan.served, plan.servedAt) : undefined;
}

function Glass({ plan }: { readonly plan: Plan }) {
  const { water, temperature, ice } = glassFigures(plan);
  const texture = textureOf(plan);
  const style = settings.value;
  return (
    <>
      <dl class="plan-facts">
        {texture !== undefined && (
          <>
            <dt>{words.glass}</dt>
            <dd>{words.texture[texture]}</dd>
          </>
        )}
        <dt>{words.water}</dt>
        <dd>
          <FigureButton figure={water} style={style} />
        </dd>
        <dt>{words.temperature}</dt>
        <dd>
          <FigureButton figure={temperature} style={style} />
        </dd>
        {ice !== undefined && (
          <>
            <dt>{words.ice}</dt>
            <dd>
              <FigureButton figure={ice} style={style} />
            </dd>
          </>
        )}
      </dl>
      {plan.spec.serve.method === "blended" && <p class="plan-quiet">{words.slushNote}</p>}
    </>
  );
}

/** Whether the bottle freezes, and how the drink stands in the glass. */
export function Cold({ specId, plan }: { readonly specId: string; readonly plan: Plan }) {
  const begins = freezingFigure(plan);
  const texture = textureOf(plan);
  const bottle =
    begins === undefined
      ? words.noWater
      : words[bottleIn(begins.value).how](figureText(begins, settings.value));
  const blended = plan.spec.serve.method === "blended" && texture !== undefined;
  const says = blended ? `${words.texture[texture]}. ${bottle}` : bottle;
  return (
    <Section specId={specId} name="cold" title={words.title} says={says}>
      {() => (
        <>
          <Bottle plan={plan} />
          <Glass plan={plan} />
        </>
      )}
    </Section>
  );
}
