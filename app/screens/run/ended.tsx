import { bottledOf, type Run } from "../../../core/run/run.ts";
import { LinkButton } from "../../parts/link-button.tsx";
import { routes } from "../../routes.ts";
import { sayLater } from "../../words/say-later.ts";
import { Verb } from "./verb.tsx";

/** What is left to do with a batch that has ended. */
export function Ended({ run }: { readonly run: Run }) {
  const words = sayLater.run;
  return (
    <div class="run-ended">
      <Verb verb={run.abandoned === undefined ? words.finished : words.stopped} />
      <p class="run-detail">
        {run.abandoned === undefined ? words.ended : words.abandonedBecause(run.abandoned.reason)}
      </p>
      <div class="run-actions">
        {bottledOf(run) !== undefined && (
          <>
            <LinkButton href={routes.shelf}>{words.toShelf}</LinkButton>
            <LinkButton href={routes.label(run.id)}>{words.toLabel}</LinkButton>
          </>
        )}
        <LinkButton href={routes.batch(run.id)}>{words.toLog}</LinkButton>
      </div>
    </div>
  );
}
