import type { Plan } from "../../../core/spec/plan.ts";
import { type PullLine, pullList } from "../../../core/spec/pull-list.ts";
import { mass } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { Section } from "./section.tsx";
import { bound, show } from "./show.ts";

const words = sayLater.plan.pull;

/** Less than this clings to the bottle, ml or g. */
const NOTHING_LEFT = 5;

function Line({ line }: { readonly line: PullLine }) {
  const size = (amount: number): string => (line.weighed ? mass(amount) : show(amount));
  const { needed, pack, packs, left, name } = line;
  return (
    <li>
      <span>{bound(name)}</span>
      <b>{words.packs(packs, size(pack))}</b>
      <small>
        {left > NOTHING_LEFT ? words.uses(size(needed), size(left)) : words.usesAll(size(needed))}
        {line.packFrom === "common-practice" && `, ${words.usual}`}
      </small>
    </li>
  );
}

/** Whole bottles and packs to fetch, for all lots together. */
export function Pull(props: { specId: string; plan: Plan; lots: number }) {
  const { specId, plan, lots } = props;
  const lines = pullList(Array.from({ length: lots }, () => plan));
  const usual = lines.some((line) => line.packFrom === "common-practice");
  const packs = lines.reduce((sum, line) => sum + line.packs, 0);
  return (
    <Section specId={specId} name="pull" title={words.title} says={words.says(packs)}>
      {() => (
        <>
          {lots > 1 && <p class="plan-strong">{words.lots(lots)}</p>}
          <ul class="plan-pull">
            {lines.map((line) => (
              <Line key={line.id} line={line} />
            ))}
          </ul>
          {usual && <p class="plan-quiet">{words.usualNote}</p>}
        </>
      )}
    </Section>
  );
}
