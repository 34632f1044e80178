import type { Complete } from "./complete.ts";
import { alarm, bench } from "./fr/bench.ts";
import { cautions } from "./fr/cautions.ts";
import { clock } from "./fr/clock.ts";
import { compare } from "./fr/compare.ts";
import { cupboard, ingredient } from "./fr/cupboard.ts";
import { days } from "./fr/days.ts";
import { drip } from "./fr/drip.ts";
import { empty } from "./fr/empty.ts";
import { events } from "./fr/events.ts";
import { first } from "./fr/first.ts";
import { dim, handOver, vessel } from "./fr/hand-over.ts";
import { handing } from "./fr/handing.ts";
import { ingredientNames } from "./fr/ingredient-names.ts";
import { kit } from "./fr/kit.ts";
import { label } from "./fr/label.ts";
import { learnt } from "./fr/learnt.ts";
import { batch, logbook } from "./fr/logbook.ts";
import { photos } from "./fr/photos.ts";
import { places } from "./fr/places.ts";
import { plan } from "./fr/plan.ts";
import { procedure, procedures } from "./fr/procedures.ts";
import { refusals } from "./fr/refusals.ts";
import { ruleTexts } from "./fr/rule-texts.ts";
import { run } from "./fr/run.ts";
import { sheet } from "./fr/sheet.ts";
import { shelf } from "./fr/shelf.ts";
import { spec, specs } from "./fr/specs.ts";
import { stock } from "./fr/stock.ts";
import { sums } from "./fr/sums.ts";
import { tasting } from "./fr/tasting.ts";
import { units } from "./fr/units.ts";
import { answers, why } from "./fr/why.ts";
import { work } from "./fr/work.ts";
import type { Tongue } from "./tongue.ts";

const words: Complete = {
  say: { alarm, bench, places, work },
  sayLater: {
    batch,
    cautions,
    clock,
    compare,
    cupboard,
    days,
    dim,
    drip,
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
  },
  answers,
  refusals,
  ingredientNames,
  ruleTexts,
};

export const french: Tongue = {
  language: "fr",
  locale: "fr-FR",
  numbers: "1 000,5",
  gap: "\u202f",
  gapBeforeColon: "\u202f",
  day: "j",
  sizes: ["ko", "Mo", "Go"],
  signFirst: false,
  units,
  words,
};
