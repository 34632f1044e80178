import { type BenchOutline, OUTLINE, OUTLINES, withOutline } from "../core/board/bench-outline.ts";

/** Addresses at which the Bench stands. */
const BENCH = ["", "#/", "#/bench"];

/** What lies in the cache was left by this app, but maybe by another version of it. */
function asOutline(value: unknown): BenchOutline | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const text = (name: string): string => {
    const part: unknown = Reflect.get(value, name);
    if (typeof part !== "string") throw new TypeError(`an outline's ${name} must be a text`);
    return part;
  };
  return {
    script: text("script"),
    page: text("page"),
    sheets: text("sheets"),
    inside: text("inside"),
    day: text("day"),
    until: Number(Reflect.get(value, "until")),
  };
}

async function keptOutline(scope: string): Promise<BenchOutline | undefined> {
  const kept = await caches.match(scope + OUTLINE, { cacheName: OUTLINES });
  return asOutline(await kept?.json());
}

/**
 * The page that a navigation gets: at the Bench with what the Bench last showed in it, wherever else
 * and whatever goes wrong as it is built.
 *
 * @param address - what was asked for
 * @param scope - the app's own address, with a closing slash
 * @param built - gives the page as it is built
 */
export async function pageFor(
  address: string,
  scope: string,
  built: () => Promise<Response>,
): Promise<Response> {
  if (!BENCH.includes(new URL(address).hash)) return built();
  const [page, outline] = await Promise.all([built(), keptOutline(scope).catch(() => undefined)]);
  if (outline === undefined) return page;
  const text = await page.clone().text();
  const outlined = withOutline(text, outline, Date.now());
  if (outlined === undefined) return page;
  return new Response(outlined, {
    headers: { "Content-Type": page.headers.get("Content-Type") ?? "text/html" },
  });
}
