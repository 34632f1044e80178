import { routes } from "./routes.ts";
import { say } from "./words/say.ts";

const PLACES = ["bench", "specs", "shelf", "logbook", "kit"] as const;

/** One of the places that the bar at the foot leads to. */
export type Place = (typeof PLACES)[number];

/** The bar at the foot of the screen. */
export function Places({ lit }: { readonly lit: Place | undefined }) {
  return (
    <nav class="app-places" aria-label={say.places.nav}>
      {PLACES.map((place) => (
        <a
          key={place}
          class="app-place"
          href={routes[place]}
          aria-current={lit === place ? "page" : undefined}
        >
          {say.places[place]}
        </a>
      ))}
    </nav>
  );
}
