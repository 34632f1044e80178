import { Fragment } from "preact";
import { useState } from "preact/hooks";
import {
  addStep,
  changeStep,
  moveStep,
  type NewStep,
  removeStep,
} from "../../../core/method/edit-procedure.ts";
import type { Procedure, Step } from "../../../core/method/procedure.ts";
import { Chips } from "../../parts/chips.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import type { ProcedureDraft } from "../../procedure-drafts.ts";
import { duration } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { nameOfStep } from "./draft.ts";
import { StepForm } from "./step-form.tsx";

const words = sayLater.procedure;

/** What kind of step it is and how long it takes, in a few words. */
export function StepSum({ step }: { readonly step: Step }) {
  const { kind, waitFor, longestFor, stands } = step;
  const times = [waitFor, longestFor].flatMap((ms) => (ms === undefined ? [] : [duration(ms)]));
  const parts = [
    words.kinds[kind],
    ...(times.length === 0 ? [] : [times.join("–")]),
    ...(stands === undefined ? [] : [words.standing[stands]]),
  ];
  return <p class="procedure-sum">{parts.join(", ")}</p>;
}

const NEW_STEPS = ["by-hand", "timed", "look", "taste", "reading"] as const;

interface AddProps {
  readonly label: string;
  readonly name: string;
  readonly onAdd: (what: NewStep) => void;
}

function Add({ label, name, onAdd }: AddProps) {
  const [open, setOpen] = useState(false);
  if (!open) {
    return (
      <TapButton size="least" tone="quiet" name={name} onAct={() => setOpen(true)}>
        {label}
      </TapButton>
    );
  }
  return (
    <Chips<NewStep>
      label={words.addWhat}
      options={NEW_STEPS.map((value) => ({ value, ...words.newSteps[value] }))}
      value={null}
      onChange={(what) => {
        setOpen(false);
        onAdd(what);
      }}
    />
  );
}

interface StepsProps {
  readonly draft: ProcedureDraft;
  readonly faults: ReadonlyMap<string, string>;
  readonly insist: boolean;
  readonly edit: (change: (draft: ProcedureDraft) => ProcedureDraft) => void;
}

interface OneProps extends StepsProps {
  readonly step: Step;
  readonly at: number;
  readonly open: boolean;
  readonly onOpen: (id: string | undefined) => void;
}

function Moves({ step, at, open, onOpen, draft, edit }: OneProps) {
  const name = nameOfStep(step);
  const reshape = (change: (procedure: Procedure) => Procedure) =>
    edit((so) => ({ ...so, procedure: change(so.procedure) }));
  return (
    <div class="procedure-moves">
      <TapButton
        size="least"
        name={words.upName(name)}
        disabled={at === 0}
        onAct={() => reshape((so) => moveStep(so, step.id, -1))}
      >
        {words.up}
      </TapButton>
      <TapButton
        size="least"
        name={words.downName(name)}
        disabled={at === draft.procedure.steps.length - 1}
        onAct={() => reshape((so) => moveStep(so, step.id, 1))}
      >
        {words.down}
      </TapButton>
      <TapButton
        size="least"
        name={words.changeName(name)}
        pressed={open}
        onAct={() => onOpen(open ? undefined : step.id)}
      >
        {words.change}
      </TapButton>
    </div>
  );
}

/** Takes a step out; where that would leave a way into nothing it says so instead. */
function Remove({ step, draft, edit, onOpen }: OneProps) {
  const [refusal, setRefusal] = useState<string>();
  const remove = () => {
    const { procedure } = draft;
    const removed = removeStep(procedure, step.id);
    if (removed.ok) {
      onOpen(undefined);
      edit((so) => ({ ...so, procedure: removed.value }));
      return;
    }
    const by = procedure.steps.find(({ id }) => id === removed.about.by);
    setRefusal(words.keeps[removed.refusal](by === undefined ? "" : nameOfStep(by)));
  };
  return (
    <>
      <HoldButton
        label={words.remove(nameOfStep(step))}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={remove}
      />
      {refusal !== undefined && (
        <p class="procedure-fault" role="alert">
          {refusal}
        </p>
      )}
    </>
  );
}

function OneStep(props: OneProps) {
  const { step, at, open, draft, faults, insist, edit } = props;
  const name = nameOfStep(step);
  // Before saving is tried, each field speaks for itself once it was left.
  const told = insist ? [...faults] : [];
  const mine = told.filter(([key]) => key.startsWith(`${step.id}/`));
  const whole = insist ? faults.get(`${step.id}/`) : undefined;
  return (
    <li class="procedure-step" data-fault={mine.length > 0}>
      <h3>{words.at(at + 1, name)}</h3>
      <StepSum step={step} />
      {whole !== undefined && <p class="procedure-fault">{whole}</p>}
      {!open && mine.length > 0 && whole === undefined && (
        <p class="procedure-fault">{mine[0]?.[1]}</p>
      )}
      <Moves {...props} />
      {open && (
        <>
          <StepForm
            draft={draft}
            step={step}
            faults={faults}
            insist={insist}
            onText={(field, text) =>
              edit((so) => ({ ...so, texts: { ...so.texts, [`${step.id}/${field}`]: text } }))
            }
            onChange={(change) =>
              edit((so) => ({ ...so, procedure: changeStep(so.procedure, step.id, change) }))
            }
          />
          <Remove {...props} />
        </>
      )}
    </li>
  );
}

/** The steps in order: each can be moved, changed, removed, and have another after it. */
export function Steps(props: StepsProps) {
  const { draft, edit } = props;
  const [open, setOpen] = useState<string>();
  const { steps } = draft.procedure;
  const add = (at: number) => (what: NewStep) => {
    const { procedure, id } = addStep(draft.procedure, at, what);
    edit((so) => ({ ...so, procedure }));
    setOpen(id);
  };
  return (
    <ol class="procedure-steps">
      <li>
        <Add label={words.addFirst} name={words.addFirst} onAdd={add(0)} />
      </li>
      {steps.map((step, at) => (
        <Fragment key={step.id}>
          <OneStep {...props} step={step} at={at} open={open === step.id} onOpen={setOpen} />
          <li>
            <Add label={words.add} name={words.addAt(nameOfStep(step))} onAdd={add(at + 1)} />
          </li>
        </Fragment>
      ))}
    </ol>
  );
}
