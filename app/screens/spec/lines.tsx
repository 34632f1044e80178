import { useId, useState } from "preact/hooks";
import { cupboard } from "../../pantry.ts";
import { Field } from "../../parts/field.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { typedNumber } from "../../parts/typed-number.ts";
import { usePress } from "../../parts/use-press.ts";
import { percent, typed } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import type { LineDraft } from "./draft.ts";
import type { FormProps } from "./form.ts";

const words = sayLater.spec.line;

/** Held-back share one step up or down: to the next ten from wherever it stands. */
function stepped(held: string, up: boolean): string {
  const share = typedNumber(held, { low: 0, high: 100, units: ["%"] }) ?? 0;
  const tens = up ? Math.floor(share / 10) + 1 : Math.ceil(share / 10) - 1;
  return typed(Math.min(100, Math.max(0, tens * 10)));
}

interface LineProps extends FormProps {
  readonly line: LineDraft;
  readonly at: number;
}

/** The list with one line changed, moved or gone. */
function useLine({ draft, edit, line, at }: LineProps) {
  const { lines } = draft;
  return {
    change: (change: Partial<LineDraft>) =>
      edit({ lines: lines.map((one) => (one.id === line.id ? { ...one, ...change } : one)) }),
    remove: () => edit({ lines: lines.filter((one) => one.id !== line.id) }),
    move: (by: 1 | -1) => {
      const rest = lines.filter((one) => one.id !== line.id);
      edit({ lines: rest.toSpliced(at + by, 0, line) });
    },
  };
}

function Held({
  line,
  faults,
  insist,
  change,
}: LineProps & { change: (to: Partial<LineDraft>) => void }) {
  return (
    <div class="spec-held">
      <TapButton
        size="key"
        name={words.less}
        onAct={() => change({ held: stepped(line.held, false) })}
      >
        −
      </TapButton>
      <div class="spec-held-share">
        <Field
          label={words.held}
          value={line.held}
          keyboard="decimal"
          insist={insist}
          fault={faults.get(`held:${line.id}`)}
          onInput={(held) => change({ held })}
        />
      </div>
      <TapButton
        size="key"
        name={words.moreHeld}
        onAct={() => change({ held: stepped(line.held, true) })}
      >
        +
      </TapButton>
    </div>
  );
}

function Settings(props: LineProps & { readonly name: string }) {
  const { draft, at, name } = props;
  const { change, remove, move } = useLine(props);
  return (
    <div class="spec-settings">
      {draft.washed && <Held {...props} change={change} />}
      <div class="spec-moves">
        <TapButton name={words.upName(name)} disabled={at === 0} onAct={() => move(-1)}>
          {words.up}
        </TapButton>
        <TapButton
          name={words.downName(name)}
          disabled={at === draft.lines.length - 1}
          onAct={() => move(1)}
        >
          {words.down}
        </TapButton>
        <TapButton name={words.removeName(name)} onAct={remove}>
          {words.remove}
        </TapButton>
      </div>
    </div>
  );
}

/** One ingredient of the spec: its amount, and behind one tap what else can be changed. */
function Line(props: LineProps) {
  const { draft, line, faults, insist } = props;
  const [open, setOpen] = useState(false);
  const id = useId();
  const name = cupboard.value.get(line.ingredientId)?.name ?? words.gone;
  const { pressing, on } = usePress({ kind: "tap", subject: name, onAct: () => setOpen(!open) });
  const share = typedNumber(line.held, { low: 0, high: 100, units: ["%"] }) ?? 0;
  const { change } = useLine(props);
  return (
    <li class="spec-line">
      <div class="spec-line-head">
        <Field
          label={name}
          value={line.amount}
          keyboard="text"
          insist={insist}
          fault={faults.get(`amount:${line.id}`)}
          hint={draft.washed && share > 0 ? words.heldNote(percent(share / 100)) : undefined}
          onInput={(amount) => change({ amount })}
        />
        <button
          type="button"
          class="spec-toggle"
          aria-label={words.more(name)}
          aria-expanded={open}
          aria-controls={id}
          data-pressing={pressing}
          {...on}
        >
          {words.settings}
        </button>
      </div>
      <div id={id}>{open && <Settings {...props} name={name} />}</div>
    </li>
  );
}

/** The ingredients of the spec, in the order they are measured out. */
export function Lines(props: FormProps) {
  const { lines } = props.draft;
  if (lines.length === 0) return <p>{sayLater.empty.lines}</p>;
  return (
    <ul class="spec-lines">
      {lines.map((line, at) => (
        <Line key={line.id} {...props} line={line} at={at} />
      ))}
    </ul>
  );
}
