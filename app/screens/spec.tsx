import { useEffect, useRef, useState } from "preact/hooks";
import type { Spec } from "../../core/spec/spec.ts";
import { dropSpec, saveSpecs, tell } from "../commands.ts";
import { freshId } from "../desk.ts";
import { cupboard } from "../pantry.ts";
import { Field } from "../parts/field.tsx";
import { HoldButton } from "../parts/hold-button.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { SaveBar } from "../parts/save-bar.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { settings, specs } from "../state.ts";
import { decimals } from "../words/format.ts";
import { sayLater, sentence } from "../words/say-later.ts";
import { AddLine } from "./spec/add-line.tsx";
import {
  BLANK,
  draftOf,
  dropDraft,
  keepDraft,
  keptDraft,
  type SpecDraft,
  sameDraft,
} from "./spec/draft.ts";
import { Lines } from "./spec/lines.tsx";
import { MakingForm } from "./spec/making-form.tsx";
import { type ReadDraft, readDraft } from "./spec/read-draft.ts";
import { KeepForm, ServeForm } from "./spec/serve-form.tsx";
import { Stands } from "./spec/stands.tsx";
import { TopUpForm, WashForm } from "./spec/wash-form.tsx";
import "./spec.css";

const words = sayLater.spec;
const NEW = "new";

const read = (draft: SpecDraft, id: string, stored: Spec | undefined): ReadDraft =>
  readDraft(
    draft,
    { id, version: (stored?.version ?? 0) + 1, demo: stored?.demo },
    cupboard.value,
    settings.value.ounce,
  );

interface FormState {
  readonly id: string;
  readonly stored: Spec | undefined;
  readonly draft: SpecDraft;
}

/** What can be done with the whole form. */
function useActions({ id, stored, draft }: FormState) {
  const [tries, setTries] = useState(0);
  const [refusal, setRefusal] = useState<string>();
  const save = async () => {
    const { spec } = read(draft, id === NEW ? freshId() : id, stored);
    if (spec === undefined) {
      setTries(tries + 1);
      return;
    }
    const written = await saveSpecs([spec]);
    setRefusal(written.ok ? undefined : sentence(written));
    if (!written.ok) return;
    setTries(0);
    // What was typed while it was being stored is not lost.
    if (keptDraft(id) === draft) dropDraft(id);
    if (spec.id !== id) location.replace(routes.spec(spec.id));
  };
  const copy = () => {
    const key = freshId();
    keepDraft(key, { ...draft, name: words.copyName(draft.name) });
    location.hash = routes.spec(key);
  };
  const remove = async () => {
    const gone = stored === undefined ? { ok: true as const } : await dropSpec(stored.id);
    if (!gone.ok) {
      setRefusal(sentence(gone));
      return;
    }
    dropDraft(id);
    if (stored !== undefined) tell(words.removed(stored.name));
    location.replace(routes.specs);
  };
  const forget = () => {
    dropDraft(id);
    setTries(0);
  };
  return { tries, refusal, save, copy, remove, forget };
}

type Actions = ReturnType<typeof useActions>;

function More({
  stored,
  changed,
  actions,
}: {
  stored: Spec | undefined;
  changed: boolean;
  actions: Actions;
}) {
  return (
    <section class="spec-section">
      <h2>{words.more}</h2>
      <TapButton onAct={actions.copy}>{words.duplicate}</TapButton>
      {changed && (
        <HoldButton
          label={words.forget}
          hints={words.hints}
          tone="plain"
          size="secondary"
          onAct={actions.forget}
        />
      )}
      {stored !== undefined && (
        <LinkButton href={routes.hand(`spec~${stored.id}`)}>{words.toHand}</LinkButton>
      )}
      {stored !== undefined && (
        <HoldButton
          label={words.remove}
          detail={words.removeDetail}
          hints={words.hints}
          tone="plain"
          size="secondary"
          onAct={() => void actions.remove()}
        />
      )}
    </section>
  );
}

interface BarProps {
  readonly stored: Spec | undefined;
  readonly changed: boolean;
  readonly faults: number;
  readonly actions: Actions;
}

/** Whether it is saved, in words, and the one thing to do about it. */
function Bar({ stored, changed, faults, actions }: BarProps) {
  const wrong = actions.tries > 0 && faults > 0 ? words.faults(faults) : actions.refusal;
  if (stored !== undefined && !changed) {
    return (
      <SaveBar says={words.saved(decimals(stored.version, 0))} wrong={wrong}>
        <LinkButton tone="main" href={routes.plan(stored.id)}>
          {sayLater.specs.plan}
        </LinkButton>
      </SaveBar>
    );
  }
  return (
    <SaveBar says={stored === undefined ? words.notYet : words.changed} wrong={wrong}>
      <TapButton onAct={() => void actions.save()}>{words.save}</TapButton>
    </SaveBar>
  );
}

function Form({ id, stored, draft }: FormState) {
  const form = useRef<HTMLElement>(null);
  const actions = useActions({ id, stored, draft });
  const origin = stored === undefined ? BLANK : draftOf(stored);
  const edit = (change: Partial<SpecDraft>) => {
    const next = { ...(keptDraft(id) ?? origin), ...change };
    if (sameDraft(next, origin) && next.awaiting === "") dropDraft(id);
    else keepDraft(id, next);
  };
  const { spec, faults } = read(draft, "draft", stored);
  const { tries } = actions;
  useEffect(() => {
    if (tries > 0) form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [tries]);
  const props = { draft, edit, faults, insist: tries > 0 };
  return (
    <main class="spec" ref={form}>
      <LinkButton tone="quiet" href={routes.specs}>
        {words.toSpecs}
      </LinkButton>
      <h1>{stored?.name ?? words.newTitle}</h1>
      <Field
        label={words.name}
        value={draft.name}
        longest={80}
        insist={props.insist}
        fault={faults.get("name")}
        onInput={(name) => edit({ name })}
      />
      <section class="spec-section">
        <h2>{words.ingredients}</h2>
        <p>{words.amountsHint}</p>
        <Lines {...props} />
        <AddLine {...props} specKey={id} />
      </section>
      <WashForm {...props} spec={spec} />
      {draft.washed && <TopUpForm {...props} />}
      <MakingForm {...props} />
      <ServeForm {...props} />
      <KeepForm {...props} />
      <Stands spec={spec} />
      <More stored={stored} changed={keptDraft(id) !== undefined} actions={actions} />
      <Bar
        stored={stored}
        changed={keptDraft(id) !== undefined}
        faults={faults.size}
        actions={actions}
      />
    </main>
  );
}

/** One spec, read and changed; `new` for one that is still to be written. */
export function SpecScreen({ id }: { readonly id: string }) {
  const stored = specs.value.find((one) => one.id === id);
  const started = stored === undefined ? undefined : draftOf(stored);
  const draft = keptDraft(id) ?? started ?? (id === NEW ? BLANK : undefined);
  if (draft === undefined) {
    return (
      <main class="spec">
        <LinkButton tone="quiet" href={routes.specs}>
          {words.toSpecs}
        </LinkButton>
        <p class="spec-lost">{words.lost}</p>
      </main>
    );
  }
  return <Form id={id} stored={stored} draft={draft} />;
}
