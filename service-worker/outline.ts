import { type BenchOutline, OUTLINE, OUTLINES, withOutline } from "../core/board/bench-outline.ts";
import { field } from "../core/quantity/field.ts";

/** Addresses at which the Bench stands. */
const BENCH = ["", "#/", "#/bench"];

function text(of: unknown, name: string): string {
  const found = field(of, name);
  if (typeof found !== "string") throw new TypeError(`an outline's ${name} must be a text`);
  return found;
}

/** What lies in the cache was left by this app, but maybe by another version of it. */
function asOutline(value: unknown): BenchOutline {
  const views = field(value, "views");
  if (!Array.isArray(views)) throw new TypeError("an outline must have views");
  return {
    script: text(value, "script"),
    page: text(value, "page"),
    sheets: text(value, "sheets"),
    day: text(value, "day"),
    views: views.map((one: unknown) => ({
      inside: text(one, "inside"),
      until: Number(field(one, "until")),
    })),
  };
}

async function keptOutline(scope: string): Promise<BenchOutline | undefined> {
  const kept = await caches.match(scope + OUTLINE, { cacheName: OUTLINES });
  return kept && asOutline(await kept.json());
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
  const outlined = withOutline(await page.clone().text(), outline, Date.now());
  if (outlined === undefined) return page;
  return new Response(outlined, {
    headers: { "Content-Type": page.headers.get("Content-Type") ?? "text/html" },
  });
}
