import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { openBatches } from "../state.ts";
import { sayLater } from "../words/say-later.ts";

/** From a screen that batches have yet to fill: to those being made, or to a spec to make one of. */
export function ToMake() {
  const words = sayLater.logbook;
  const running = openBatches.value.length > 0;
  return (
    <LinkButton tone="main" href={running ? routes.bench : routes.specs}>
      {running ? words.toBench : words.toSpecs}
    </LinkButton>
  );
}
