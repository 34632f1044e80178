import { spanish } from "../../../app/words/es.ts";
import { french } from "../../../app/words/fr.ts";
import { ENGLISH, type Tongue } from "../../../app/words/tongue.ts";

/** What the app speaks beside English, by its English name. */
export const OTHER_TONGUES: readonly (readonly [name: string, tongue: Tongue])[] = [
  ["Spanish", spanish],
  ["French", french],
];

/** Every language that the app speaks. */
export const TONGUES: typeof OTHER_TONGUES = [["English", ENGLISH], ...OTHER_TONGUES];
