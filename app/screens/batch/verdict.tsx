import { useState } from "preact/hooks";
import * as z from "zod/mini";
import type { Run } from "../../../core/run/run.ts";
import { REPEATS, type Repeat, type Verdict as Said, VERDICTS } from "../../../core/run/taste.ts";
import { draftBook } from "../../drafts.ts";
import { noted } from "../../noted.ts";
import { Chips } from "../../parts/chips.tsx";
import { Field } from "../../parts/field.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { dateYear } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

interface VerdictDraft {
  readonly verdict: Said | null;
  readonly repeat: Repeat | null;
  readonly text: string;
}

const draftSchema = z.object({
  verdict: z.nullable(z.enum(VERDICTS)),
  repeat: z.nullable(z.enum(REPEATS)),
  text: z.string(),
});

/** Verdicts that were begun, by batch. */
const drafts = draftBook<VerdictDraft>("verdict", (kept) => draftSchema.safeParse(kept));
const LONGEST = 400;

function Form(props: { readonly run: Run; readonly onKept: () => void }) {
  const { run, onKept } = props;
  const [fault, setFault] = useState<string | undefined>(undefined);
  const words = sayLater.tasting;
  const last = run.verdicts.at(-1);
  const draft = drafts.keptDraft(run.id) ?? {
    verdict: last?.verdict ?? null,
    repeat: last?.repeat ?? null,
    text: last?.text ?? "",
  };
  const { verdict, repeat, text } = draft;
  const keep = (change: Partial<VerdictDraft>) => drafts.keepDraft(run.id, { ...draft, ...change });
  const note = async () => {
    if (verdict === null || repeat === null) return;
    const order = { type: "give-verdict", verdict, repeat, text } as const;
    const wrong = await noted(run.id, order, words.verdict.kept);
    setFault(wrong);
    if (wrong !== undefined) return;
    drafts.dropDraft(run.id);
    onKept();
  };
  return (
    <>
      <Chips
        label={words.verdict.what}
        options={VERDICTS.map((value) => ({ value, label: words.verdicts[value] }))}
        value={verdict}
        onChange={(value) => keep({ verdict: value })}
      />
      <Chips
        label={words.verdict.again}
        options={REPEATS.map((value) => ({ value, label: words.verdict.repeat[value] }))}
        value={repeat}
        onChange={(value) => keep({ repeat: value })}
      />
      <Field
        label={words.verdict.why}
        value={text}
        rows={2}
        longest={LONGEST}
        onInput={(typed) => keep({ text: typed })}
      />
      {fault !== undefined && (
        <p class="batch-fault" role="alert">
          {fault}
        </p>
      )}
      <HoldButton
        label={words.verdict.keep}
        hints={say.work.hints}
        disabled={verdict === null || repeat === null}
        onAct={() => void note()}
      />
    </>
  );
}

function Given({ run }: { readonly run: Run }) {
  const words = sayLater.tasting;
  const last = run.verdicts.at(-1);
  if (last === undefined) return <p>{words.verdict.none}</p>;
  return (
    <>
      <p>
        <strong class="batch-figure">{words.verdicts[last.verdict]}</strong>
        {`, ${words.repeats[last.repeat]}`}
      </p>
      {last.text !== "" && <p>{last.text}</p>}
      <p class="soft">{dateYear(last.at)}</p>
    </>
  );
}

/** What somebody made of the whole, and whether it is to be made again. */
export function Verdict({ run }: { readonly run: Run }) {
  const [open, setOpen] = useState(drafts.keptDraft(run.id) !== undefined);
  const words = sayLater.tasting.verdict;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <Given run={run} />
      <TapButton pressed={open} onAct={() => setOpen(!open)}>
        {open ? words.close : run.verdicts.length === 0 ? words.give : words.change}
      </TapButton>
      {open && <Form run={run} onKept={() => setOpen(false)} />}
    </section>
  );
}
