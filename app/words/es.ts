import type { Complete } from "./complete.ts";
import { alarm, bench } from "./es/bench.ts";
import { cautions } from "./es/cautions.ts";
import { clock } from "./es/clock.ts";
import { compare } from "./es/compare.ts";
import { cupboard, ingredient } from "./es/cupboard.ts";
import { days } from "./es/days.ts";
import { drip } from "./es/drip.ts";
import { empty } from "./es/empty.ts";
import { events } from "./es/events.ts";
import { first } from "./es/first.ts";
import { dim, handOver, vessel } from "./es/hand-over.ts";
import { handing } from "./es/handing.ts";
import { ingredientNames } from "./es/ingredient-names.ts";
import { kit } from "./es/kit.ts";
import { label } from "./es/label.ts";
import { learnt } from "./es/learnt.ts";
import { batch, logbook } from "./es/logbook.ts";
import { photos } from "./es/photos.ts";
import { places } from "./es/places.ts";
import { plan } from "./es/plan.ts";
import { procedure, procedures } from "./es/procedures.ts";
import { refusals } from "./es/refusals.ts";
import { ruleTexts } from "./es/rule-texts.ts";
import { run } from "./es/run.ts";
import { sheet } from "./es/sheet.ts";
import { shelf } from "./es/shelf.ts";
import { spec, specs } from "./es/specs.ts";
import { stock } from "./es/stock.ts";
import { sums } from "./es/sums.ts";
import { tasting } from "./es/tasting.ts";
import { units } from "./es/units.ts";
import { answers, why } from "./es/why.ts";
import { work } from "./es/work.ts";
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

export const spanish: Tongue = {
  language: "es",
  locale: "es-ES",
  numbers: "1.000,5",
  gap: "\u00a0",
  gapBeforeColon: "",
  day: "d",
  sizes: ["kB", "MB", "GB"],
  signFirst: false,
  units,
  words,
};
