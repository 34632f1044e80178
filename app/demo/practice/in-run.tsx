import type { Run } from "../../../core/run/run.ts";
import { tell } from "../../commands.ts";
import { removePractice } from "../../commands-demo.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

function Remove({ says, main = false }: { readonly says: string; readonly main?: boolean }) {
  const remove = async () => {
    // The screen of a run that is gone would say so.
    location.hash = routes.bench;
    const removed = await removePractice();
    tell(removed.ok ? sayLater.first.gone : sentence(removed));
  };
  return (
    <TapButton {...(main ? {} : { tone: "quiet" })} onAct={() => void remove()}>
      {says}
    </TapButton>
  );
}

/** Says on each step that it is only practice, with the way out. */
export function PracticeMark() {
  const words = sayLater.first;
  return (
    <div>
      <p class="run-note">{words.mark}</p>
      <Remove says={words.leave} />
    </div>
  );
}

/** What is said when the practice is over, or was stopped. */
export function PracticeOver({ run }: { readonly run: Run }) {
  const words = sayLater.first;
  return (
    <div class="run-ended">
      <h1 class="run-verb">{run.abandoned === undefined ? words.over : sayLater.run.stopped}</h1>
      <p class="run-detail">{words.overWhy}</p>
      <div class="run-actions">
        <Remove says={words.done} main />
      </div>
    </div>
  );
}
