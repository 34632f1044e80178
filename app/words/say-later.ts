import { cautions } from "./en/cautions.ts";
import { clock } from "./en/clock.ts";
import { compare } from "./en/compare.ts";
import { cupboard, ingredient } from "./en/cupboard.ts";
import { days } from "./en/days.ts";
import { drip } from "./en/drip.ts";
import { empty } from "./en/empty.ts";
import { events } from "./en/events.ts";
import { first } from "./en/first.ts";
import { dim, handOver, vessel } from "./en/hand-over.ts";
import { handing } from "./en/handing.ts";
import { kit } from "./en/kit.ts";
import { label } from "./en/label.ts";
import { learnt } from "./en/learnt.ts";
import { batch, logbook } from "./en/logbook.ts";
import { photos } from "./en/photos.ts";
import { plan } from "./en/plan.ts";
import { procedure, procedures } from "./en/procedures.ts";
import { refusals } from "./en/refusals.ts";
import { run } from "./en/run.ts";
import { sheet } from "./en/sheet.ts";
import { shelf } from "./en/shelf.ts";
import { spec, specs } from "./en/specs.ts";
import { stock } from "./en/stock.ts";
import { sums } from "./en/sums.ts";
import { tasting } from "./en/tasting.ts";
import { why } from "./en/why.ts";
import type { Spoken } from "./spoken.ts";
import { live } from "./tongue.ts";

const later = {
  batch,
  cautions,
  clock,
  compare,
  cupboard,
  days,
  drip,
  dim,
  empty,
  events,
  first,
  handing,
  handOver,
  ingredient,
  kit,
  label,
  learnt,
  logbook,
  photos,
  plan,
  procedure,
  procedures,
  run,
  sheet,
  shelf,
  spec,
  specs,
  stock,
  sums,
  tasting,
  vessel,
  why,
};

/** Wording of screens that are fetched later: kept out of what the page loads before it can draw. */
export const sayLater: Spoken<typeof later> = live("sayLater", later);

/** By the refusal's code. */
export const refusalWords: typeof refusals = live("refusals", refusals);

/** The sentence for a refusal. */
export function sentence(refused: {
  readonly refusal: string;
  readonly about: Readonly<Record<string, string | number>>;
}): string {
  const words = refusalWords[refused.refusal];
  return words === undefined ? refused.refusal : words(refused.about);
}
