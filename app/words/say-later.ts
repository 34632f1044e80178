import { cautions } from "./en/cautions.ts";
import { cupboard, ingredient } from "./en/cupboard.ts";
import { events } from "./en/events.ts";
import { kit } from "./en/kit.ts";
import { label } from "./en/label.ts";
import { batch, logbook } from "./en/logbook.ts";
import { plan } from "./en/plan.ts";
import { refusals } from "./en/refusals.ts";
import { run } from "./en/run.ts";
import { sheet } from "./en/sheet.ts";
import { shelf } from "./en/shelf.ts";
import { spec, specs } from "./en/specs.ts";
import { sums } from "./en/sums.ts";

/** Wording of screens that are fetched later: kept out of what the page loads before it can draw. */
export const sayLater = {
  batch,
  cautions,
  cupboard,
  events,
  ingredient,
  kit,
  label,
  logbook,
  plan,
  run,
  sheet,
  shelf,
  spec,
  specs,
  sums,
};

/** The sentence for a refusal. */
export function sentence(refused: {
  readonly refusal: string;
  readonly about: Readonly<Record<string, string | number>>;
}): string {
  const words = refusals[refused.refusal];
  return words === undefined ? refused.refusal : words(refused.about);
}
