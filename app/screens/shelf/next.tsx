import { useState } from "preact/hooks";
import { type NextBatch, nextBatches, plannedAgain } from "../../ahead/next-batch.ts";
import { minute } from "../../ahead/prep.ts";
import { savePlanned, tell } from "../../commands.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { routes } from "../../routes.ts";
import { dueTime } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

function Put({ next }: { readonly next: NextBatch }) {
  const [fault, setFault] = useState<string | undefined>(undefined);
  const words = sayLater.shelf.next;
  const put = async () => {
    const some = plannedAgain(next);
    if (some === undefined) return setFault(words.noSpec);
    const saved = await savePlanned(some);
    setFault(saved.ok ? undefined : sentence(saved));
    if (saved.ok) tell(sayLater.days.isOn(some.length - 1));
  };
  return (
    <>
      {fault !== undefined && (
        <p class="shelf-strong" role="alert">
          {fault}
        </p>
      )}
      <HoldButton
        label={words.put}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={() => void put()}
      />
    </>
  );
}

function Entry({ next }: { readonly next: NextBatch }) {
  const words = sayLater.shelf.next;
  const { name, pour, usage, outAt, startBy, doing } = next;
  const now = minute.value;
  const perDay = usage.mlPerDay / pour;
  return (
    <li class="shelf-next">
      <h3>{name}</h3>
      <p class="shelf-strong">
        {outAt <= now ? words.out : words.lasts(dueTime(outAt, now))}
        {startBy !== undefined &&
          doing === undefined &&
          ` ${startBy <= now ? words.startNow : words.startBy(dueTime(startBy, now))}`}
      </p>
      <p class="soft">{words.rate(perDay, usage.evenings, usage.days)}</p>
      {doing !== undefined && <p>{words.doing[doing]}</p>}
      {doing === undefined && startBy === undefined && <p>{words.noSpec}</p>}
      {doing === undefined && startBy !== undefined && <Put next={next} />}
    </li>
  );
}

/** How long each drink will last, and when to begin the next batch of it. */
export function Next() {
  const words = sayLater.shelf.next;
  const all = nextBatches.value;
  if (all.length === 0) return null;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <ul class="shelf-nexts">
        {all.map((next) => (
          <Entry key={next.specId} next={next} />
        ))}
      </ul>
      <p class="soft">{words.note}</p>
      <LinkButton href={routes.days}>{sayLater.days.link}</LinkButton>
    </section>
  );
}
