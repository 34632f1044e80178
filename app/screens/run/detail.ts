import { volumeOf } from "../../../core/liquid/liquid.ts";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { settings } from "../../state.ts";
import { mass, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

/** What a step asks for, in one or two sentences with the amounts of this batch. */
export function detailOf(run: Run, visit: Visit): string {
  const words = sayLater.run.details;
  const step = stepOfVisit(run, visit);
  if (step.detail !== undefined) return step.detail;
  const { plan } = run;
  const show = (ml: number) => volume(ml, settings.value);
  const punch = show(volumeOf(plan.mixed));
  switch (step.work) {
    case "build":
      return words.build;
    case "milk":
      return words.milk(show(plan.milk?.ml ?? 0), mass(plan.milk?.g ?? 0));
    case "pour":
      return plan.spec.wash?.order === "milk-into-punch"
        ? words.pourMilkIntoPunch(punch)
        : words.pourPunchIntoMilk(punch);
    case "rest":
      return words.curdle;
    case "filter":
      return words.filter(plan.spec.wash?.filters ?? 1);
    case "pass":
      return step.look === true ? words.checkClear : words.firstPass;
    case "re-pour":
      return words.rePour;
    case "drip":
      return words.slowDrip;
    case "yield": {
      const expected = plan.yield;
      if (expected === undefined) return "";
      return words.yield(show(expected.expected), show(expected.low), show(expected.high));
    }
    case "bottle":
      return words.bottle;
    case "label":
      return words.label;
    case "top-up":
    case "other":
      return "";
  }
}
