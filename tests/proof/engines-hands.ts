import * as z from "zod/mini";
import { HOLD_FOR, LEAST_CONTACT, QUIET_AFTER_ACTION } from "../../app/parts/press-rules.ts";
import { type Glass, pause, untilDone } from "./webdriver.ts";

/** What the page is asked to find: the first that is drawn, by selector and by its words. */
export interface Wanted {
  readonly css: string;
  /** All of its words, or its name read out. */
  readonly says?: string;
}

/** A little longer than a rule asks for: nothing here stamps its own time. */
const SURELY = 1.5;

const placeSchema = z.object({ x: z.number(), y: z.number(), over: z.nullable(z.string()) });
const count = z.number();

/**
 * In the page: where a control lies, brought into view if it must be. A hold button says more than
 * its label, so any one of its parts may be what is wanted.
 */
function find(css: string, says: string | undefined) {
  const bare = (text: string | null | undefined) => (text ?? "").replace(/\s+/gu, " ").trim();
  const named = (one: Element) =>
    says === undefined ||
    [one, ...one.children].some(
      (part) => bare(part.textContent) === bare(says) || part.getAttribute("aria-label") === says,
    );
  const box = (one: Element) => one.getBoundingClientRect();
  const all = [...document.querySelectorAll(css)].filter((one) => box(one).width > 0 && named(one));
  const [first] = all;
  if (first === undefined) return null;
  const lie = () => {
    const { x, y, width, height } = box(first);
    const place = { x: x + width / 2, y: y + height / 2 };
    const top = document.elementFromPoint(place.x, place.y);
    return {
      ...place,
      over: first.contains(top) ? null : (top?.outerHTML ?? "outside").slice(0, 120),
    };
  };
  const now = lie();
  if (now.over === null) return now;
  first.scrollIntoView({ block: "center" });
  return lie();
}

/** Calls a function in the page. It may use nothing but its arguments and the page. */
export async function ask<Args extends readonly unknown[], Value>(
  glass: Glass,
  schema: z.ZodMiniType<Value>,
  body: (...args: Args) => unknown,
  ...args: Args
): Promise<Value> {
  const list = args.map((one) => JSON.stringify(one) ?? "undefined").join(", ");
  return schema.parse(JSON.parse(await glass.evaluate(`(${body})(${list})`)));
}

/** Waits until something is drawn, and says where. */
const placeOf = (glass: Glass, { css, says }: Wanted) =>
  untilDone(async () => {
    const found = await ask(glass, z.nullable(placeSchema), find, css, says);
    if (found === null) throw new Error(`not on the screen: ${css} ${says ?? ""}`);
    return found;
  });

/** Waits until something is drawn. */
export const untilSeen = async (glass: Glass, wanted: Wanted): Promise<void> =>
  void (await placeOf(glass, wanted));

/** Waits until nothing of the kind is there. */
export const untilGone = (glass: Glass, css: string): Promise<void> =>
  untilDone(async () => {
    const left = await ask(glass, count, (one) => document.querySelectorAll(one).length, css);
    if (left > 0) throw new Error(`still on the screen: ${css}`);
  });

async function press(glass: Glass, wanted: Wanted, lasts: number): Promise<void> {
  // The whole screen is deaf for a moment after an action.
  await pause(QUIET_AFTER_ACTION * SURELY);
  const { over, x, y } = await untilDone(async () => {
    const place = await placeOf(glass, wanted);
    if (place.over !== null)
      throw new Error(`${wanted.css} ${wanted.says ?? ""} lies under ${place.over}`);
    return place;
  });
  if (over === null) await glass.press({ x, y }, lasts);
}

/** Lays a finger on a control for as long as a tap takes. */
export const tap = (glass: Glass, wanted: Wanted): Promise<void> =>
  press(glass, wanted, LEAST_CONTACT * SURELY);

/** Lays a finger on a control for as long as a hold takes. */
export const hold = (glass: Glass, label: string): Promise<void> =>
  press(glass, { css: ".hold-button", says: label }, HOLD_FOR * SURELY);

/** A button, by its words. */
export const button = (says: string): Wanted => ({ css: "button", says });

/** Watches the page for what goes wrong in it, from now to the next load. */
const watch = () => {
  if (Reflect.has(globalThis, "faults")) return 0;
  const faults: string[] = [];
  Reflect.set(globalThis, "faults", faults);
  addEventListener("error", (event) => faults.push(event.message));
  addEventListener("unhandledrejection", (event) => faults.push(String(event.reason)));
  document.addEventListener("securitypolicyviolation", (event) =>
    faults.push(`policy: ${event.violatedDirective} ${event.blockedURI}`),
  );
  return faults.length;
};

const faultsSoFar = () => Reflect.get(globalThis, "faults") ?? [];

/** A page that is watched, also after it was loaded anew. */
export function watched(
  glass: Glass,
): Glass & { readonly faults: () => Promise<readonly string[]> } {
  const before: string[] = [];
  const collect = () => ask(glass, z.array(z.string()), faultsSoFar);
  const loading = (load: () => Promise<void>) => async () => {
    before.push(...(await collect().catch(() => [])));
    await load();
    await ask(glass, count, watch);
  };
  return {
    ...glass,
    goTo: (url) => loading(() => glass.goTo(url))(),
    reload: loading(glass.reload),
    faults: async () => [...before, ...(await collect())],
  };
}
