import { useEffect, useRef, useState } from "preact/hooks";
import { type Procedure, stepOf } from "../../core/method/procedure.ts";
import { PROCEDURES } from "../../core/method/procedures.ts";
import { dropProcedure, saveProcedure, tell } from "../commands.ts";
import { Field } from "../parts/field.tsx";
import { HoldButton } from "../parts/hold-button.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { SelectField } from "../parts/select-field.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { procedureBook, usersOf } from "../procedure-book.ts";
import {
  copyIntoForm,
  dropDraft,
  keepDraft,
  keptDraft,
  type ProcedureDraft,
} from "../procedure-drafts.ts";
import { routes } from "../routes.ts";
import { ownProcedures } from "../state.ts";
import { decimals } from "../words/format.ts";
import { procedureName } from "../words/procedure-name.ts";
import { say } from "../words/say.ts";
import { sayLater, sentence } from "../words/say-later.ts";
import { stepTitle } from "../words/step-title.ts";
import { nameOfStep, type ReadProcedure, readDraft } from "./procedure/draft.ts";
import { StepSum, Steps } from "./procedure/steps.tsx";
import "./procedure.css";

const words = sayLater.procedure;

function Shipped({ procedure }: { readonly procedure: Procedure }) {
  return (
    <>
      <p>{words.shipped}</p>
      <TapButton onAct={() => copyIntoForm(procedure)}>{words.copyIt}</TapButton>
      <h2>{words.steps}</h2>
      <ol class="procedure-steps">
        {procedure.steps.map((step, at) => (
          <li key={step.id} class="procedure-step">
            <h3>{words.at(at + 1, stepTitle(step))}</h3>
            <StepSum step={step} />
          </li>
        ))}
      </ol>
    </>
  );
}

interface FormProps {
  readonly id: string;
  readonly stored: Procedure | undefined;
  readonly draft: ProcedureDraft;
}

function useActions({ id, stored, draft }: FormProps) {
  const [tries, setTries] = useState(0);
  const [refusal, setRefusal] = useState<string>();
  const save = async () => {
    const { procedure } = readDraft(draft, (stored?.version ?? 0) + 1);
    if (procedure === undefined) {
      setTries(tries + 1);
      return;
    }
    const written = await saveProcedure(procedure);
    setRefusal(written.ok ? undefined : sentence(written));
    if (!written.ok) return;
    setTries(0);
    // What was typed while it was being stored is not lost.
    if (keptDraft(id) === draft) dropDraft(id);
  };
  const remove = async () => {
    const users = usersOf(id);
    if (users.length > 0) {
      setRefusal(words.inUse(users.join(", ")));
      return;
    }
    const gone = stored === undefined ? { ok: true as const } : await dropProcedure(id);
    if (!gone.ok) {
      setRefusal(sentence(gone));
      return;
    }
    dropDraft(id);
    tell(words.removed(procedureName(draft.procedure)));
    location.replace(routes.procedures);
  };
  const forget = () => {
    dropDraft(id);
    setTries(0);
    if (stored === undefined) location.replace(routes.procedures);
  };
  return { tries, refusal, save, remove, forget };
}

type Actions = ReturnType<typeof useActions>;

function More({ draft, changed, actions }: FormProps & { changed: boolean; actions: Actions }) {
  return (
    <section class="procedure-part">
      <h2>{words.more}</h2>
      <TapButton onAct={() => copyIntoForm(draft.procedure)}>{words.copyIt}</TapButton>
      {changed && (
        <HoldButton
          label={words.forget}
          hints={say.work.hints}
          tone="plain"
          size="secondary"
          onAct={actions.forget}
        />
      )}
      <HoldButton
        label={words.removeAll}
        detail={words.removeDetail}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={() => void actions.remove()}
      />
    </section>
  );
}

function Head({ draft, edit, faults, insist }: HeadProps) {
  const { procedure } = draft;
  const { perishableFrom: _, ...unmarked } = procedure;
  return (
    <>
      <Field
        label={words.name}
        value={procedure.name ?? ""}
        longest={80}
        insist={insist}
        fault={faults.get("name")}
        onInput={(name) => edit((so) => ({ ...so, procedure: { ...so.procedure, name } }))}
      />
      <SelectField
        label={words.perishable}
        hint={words.perishableHint}
        choices={[
          { value: "", label: words.perishableNone },
          ...procedure.steps.map((step) => ({ value: step.id, label: nameOfStep(step) })),
        ]}
        value={procedure.perishableFrom ?? ""}
        onChange={(from) =>
          edit((so) => ({
            ...so,
            procedure: from === "" ? unmarked : { ...so.procedure, perishableFrom: from },
          }))
        }
      />
    </>
  );
}

interface HeadProps {
  readonly draft: ProcedureDraft;
  readonly edit: (change: (draft: ProcedureDraft) => ProcedureDraft) => void;
  readonly faults: ReadonlyMap<string, string>;
  readonly insist: boolean;
}

interface WarningsProps {
  readonly draft: ProcedureDraft;
  readonly warnings: ReadProcedure["warnings"];
}

function Warnings({ draft, warnings }: WarningsProps) {
  const title = (id: string): string => nameOfStep(stepOf(draft.procedure, id));
  return (
    <>
      {warnings.map((one) => {
        const step = "step" in one ? one.step : "";
        return (
          <p key={`${one.warning} ${step}`} class="procedure-warning">
            {words.warnings[one.warning](step === "" ? "" : title(step))}
          </p>
        );
      })}
    </>
  );
}

function Form(props: FormProps) {
  const { id, stored, draft } = props;
  const form = useRef<HTMLDivElement>(null);
  const actions = useActions(props);
  const edit = (change: (draft: ProcedureDraft) => ProcedureDraft) =>
    keepDraft(id, change(keptDraft(id) ?? draft));
  const { faults, warnings } = readDraft(draft, 1);
  const { tries, refusal } = actions;
  useEffect(() => {
    if (tries > 0)
      form.current?.querySelector<HTMLElement>('[data-fault="true"]')?.scrollIntoView();
  }, [tries]);
  const changed = keptDraft(id) !== undefined;
  const wrong = tries > 0 && faults.size > 0 ? words.faultCount(faults.size) : refusal;
  return (
    <div class="procedure-part" ref={form}>
      <Head draft={draft} edit={edit} faults={faults} insist={tries > 0} />
      <Warnings draft={draft} warnings={warnings} />
      <h2>{words.steps}</h2>
      <Steps draft={draft} faults={faults} insist={tries > 0} edit={edit} />
      <More {...props} changed={changed} actions={actions} />
      {stored !== undefined && !changed ? (
        <SaveBar says={words.saved(decimals(stored.version, 0))} wrong={refusal} />
      ) : (
        <SaveBar says={stored === undefined ? words.notYet : words.changed} wrong={wrong}>
          <TapButton onAct={() => void actions.save()}>{words.save}</TapButton>
        </SaveBar>
      )}
    </div>
  );
}

function Body({ id }: { readonly id: string }) {
  const shipped = PROCEDURES.find((one) => one.id === id);
  const stored = ownProcedures.value.find((one) => one.id === id);
  const draft = keptDraft(id) ?? (stored && { procedure: stored, texts: {} });
  if (draft !== undefined) return <Form id={id} stored={stored} draft={draft} />;
  return shipped === undefined ? <p>{words.lost}</p> : <Shipped procedure={shipped} />;
}

/** One procedure: the house's own to change, a shipped one to read and copy. */
export function ProcedureScreen({ id }: { readonly id: string }) {
  const named = keptDraft(id)?.procedure ?? procedureBook.value.find((one) => one.id === id);
  return (
    <main class="procedure">
      <LinkButton tone="quiet" href={routes.procedures}>
        {words.toAll}
      </LinkButton>
      <h1>{named === undefined ? sayLater.procedures.title : procedureName(named)}</h1>
      <Body id={id} />
    </main>
  );
}
