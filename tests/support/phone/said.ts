import { say } from "../../../app/words/say.ts";
import { sayLater } from "../../../app/words/say-later.ts";

/** Every word of the app, wherever it is loaded from. */
export const said = { ...sayLater, ...say };
