import { LESSONS, type LessonName, lessonOf } from "../../../core/logbook/learn/house-learning.ts";
import type { Shrunk } from "../../../core/logbook/learn/shrunk.ts";
import type { BatchRecord } from "../../../core/logbook/record.ts";
import { ownProcedures } from "../../state.ts";
import { decimals, duration, percent } from "../../words/format.ts";
import { procedureName } from "../../words/procedure-name.ts";
import { sayLater } from "../../words/say-later.ts";

const TEXTS: Readonly<Record<LessonName, (value: number) => string>> = {
  curd: (value) => decimals(value, 2),
  share: percent,
  clear: duration,
  drip: (value) => sayLater.learnt.times(decimals(value, 1)),
  passes: (value) => decimals(value, 1),
};

const whole = (value: number): string => decimals(value, 0);

function fromText({ batches, house }: Shrunk): string {
  const words = sayLater.learnt;
  return house === 0 ? words.stated : words.n(whole(batches), whole(house));
}

function Lesson({ name, found }: { readonly name: LessonName; readonly found: Shrunk }) {
  const words = sayLater.learnt;
  const text = TEXTS[name];
  return (
    <div>
      <dt>{words.lessons[name]}</dt>
      <dd>{text(found.mean)}</dd>
      <dd class="soft-small">
        {words.range} {text(found.low)}–{text(found.high)}, {fromText(found)}
      </dd>
    </div>
  );
}

/** What the latest batch of a kind was, in words. */
function kindText({ wash, procedureId }: BatchRecord): string {
  const procedure = ownProcedures.value.find(({ id }) => id === procedureId) ?? { id: procedureId };
  const shape = wash === undefined ? "unknown" : wash.shape;
  return sayLater.learnt.kind(
    procedureName(procedure),
    sayLater.compare.kinds[shape],
    wash === undefined ? "" : sayLater.ingredient.dairies[wash.dairy].toLowerCase(),
  );
}

interface KindProps {
  /** Every batch of its world. */
  readonly batches: readonly BatchRecord[];
  readonly kind: string;
  /** A batch of that kind. */
  readonly sample: BatchRecord;
}

/** What is expected of the next batch of one kind. */
export function Kind({ batches, kind, sample }: KindProps) {
  return (
    <div class="learnt-kind">
      <h3>{kindText(sample)}</h3>
      <dl class="learnt-lessons">
        {LESSONS.map((name) => (
          <Lesson key={name} name={name} found={lessonOf(batches, name, kind)} />
        ))}
      </dl>
    </div>
  );
}
