import { alarm, bench } from "./en/bench.ts";
import { places } from "./en/places.ts";
import { work } from "./en/work.ts";

/** All wording of the app, by place. */
export const say = { alarm, bench, places, work };
