import { strengthOf } from "../../liquid/liquid.ts";
import { portion } from "../../liquid/mixing.ts";
import { actualFinal } from "../../run/actual.ts";
import { measuredYield, type Run, topUpOf } from "../../run/run.ts";
import { clearSoFar } from "../../run/top-up-advice.ts";
import { servePour } from "../../spec/serve.ts";
import type { StageName } from "../../spec/stages.ts";

/** The strength at one stage: as planned, and as it came out where something was measured. v/v */
export interface StageStrength {
  readonly stage: StageName;
  readonly planned: number;
  readonly actual?: number;
}

/**
 * How strong a batch was to be at each stage, beside how strong it came out.
 *
 * @source mass balance: `clearSoFar` and `actualFinal`, the glass as `servePour`
 * @returns no actual strength in the glass where nothing is left to pour, as after a yield of 0
 * @limits nobody measures strength here: "actual" follows from measured milk, yield and top-up
 */
export function stageStrengthsOf(run: Run): readonly StageStrength[] {
  const { plan } = run;
  const final = actualFinal(run);
  const poured = topUpOf(run) !== undefined || plan.heldBackMl === 0;
  const isMeasured = measuredYield(run) !== undefined;
  const { serve } = plan.spec;
  const came = (strength: number, known: boolean) => (known ? { actual: strength } : {});
  const mixed = { stage: "mixed", planned: strengthOf(plan.mixed) } as const;
  const ends = isMeasured && poured;
  const inTheGlass = (): number => strengthOf(servePour(portion(final, serve.pour), serve).liquid);
  const inGlass = {
    stage: "glass",
    planned: strengthOf(plan.served),
    ...(ends && final.water > 0 ? { actual: inTheGlass() } : {}),
  } as const;
  if (plan.washed === undefined) return [mixed, inGlass];
  return [
    mixed,
    {
      stage: "washed",
      planned: strengthOf(plan.washed),
      ...came(strengthOf(clearSoFar(run)), isMeasured),
    },
    {
      stage: "topped-up",
      planned: strengthOf(plan.final),
      ...came(strengthOf(final), ends),
    },
    inGlass,
  ];
}
