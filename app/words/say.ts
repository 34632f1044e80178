import { alarm, bench } from "./en/bench.ts";
import { places } from "./en/places.ts";
import { work } from "./en/work.ts";
import type { Spoken } from "./spoken.ts";
import { live } from "./tongue.ts";

/** What the first screen says, by place. */
const first = { alarm, bench, places, work };

/** All wording of the app that the first screen needs, by place, in the language of the moment. */
export const say: Spoken<typeof first> = live("say", first);
