import { useState } from "preact/hooks";
import { strengthOf } from "../../core/liquid/liquid.ts";
import { foldedWords } from "../../core/spec/find-ingredient.ts";
import { NEW_HOUSE } from "../../core/spec/house-rules.ts";
import { planBatch } from "../../core/spec/plan-batch.ts";
import type { Spec } from "../../core/spec/spec.ts";
import { saveSpecs } from "../commands.ts";
import { DEMO_SPECS } from "../demo/specs.ts";
import { cupboard } from "../pantry.ts";
import { Field } from "../parts/field.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { routes } from "../routes.ts";
import { settings, specs } from "../state.ts";
import { abv, volume } from "../words/format.ts";
import { sayLater, sentence } from "../words/say-later.ts";
import { tongue } from "../words/tongue.ts";
import "./specs.css";

const words = sayLater.specs;
/** Fewer than this are seen at a glance. */
const WORTH_SEARCHING = 8;
/** Large enough that what the filters keep no longer shows. */
const MANY = 100;

/** What a spec comes to in the bottle, or why it comes to nothing yet. */
function summaryOf(spec: Spec): string {
  const { ounce } = settings.value;
  const plan = planBatch(
    spec,
    cupboard.value,
    { by: "serves", serves: MANY },
    { ...NEW_HOUSE, ounce },
  );
  if (!plan.ok) return sentence(plan);
  const pour = volume(spec.serve.pour, settings.value);
  return words.summary(pour, abv(strengthOf(plan.value.final)));
}

function Entry({ spec }: { readonly spec: Spec }) {
  const summary = summaryOf(spec);
  return (
    <li class="specs-entry">
      <h2 class="specs-name">
        {spec.name} {spec.demo === true && <span class="specs-mark">{words.demo}</span>}
      </h2>
      <p>
        {spec.wash === undefined ? words.notWashed : words.washed} · {summary}
      </p>
      <div class="specs-acts">
        <LinkButton href={routes.spec(spec.id)} name={words.openName(spec.name)}>
          {words.open}
        </LinkButton>
        <LinkButton tone="main" href={routes.plan(spec.id)} name={words.planName(spec.name)}>
          {words.plan}
        </LinkButton>
      </div>
    </li>
  );
}

/** The demo specs that are not in the book, offered; none that is there is touched. */
function DemoOffer({ missing }: { readonly missing: readonly Spec[] }) {
  const [refusal, setRefusal] = useState<string>();
  const put = async () => {
    const written = await saveSpecs(missing);
    setRefusal(written.ok ? undefined : sentence(written));
  };
  const whole = missing.length === DEMO_SPECS.length;
  return (
    <>
      <TapButton onAct={() => void put()}>
        {whole ? words.putDemo : words.putDemoBack(missing.length)}
      </TapButton>
      {refusal !== undefined && <p role="alert">{refusal}</p>}
    </>
  );
}

/** Whether every word typed begins a word of the name. */
function isNamed(name: string, looked: string): boolean {
  const inName = foldedWords(name);
  return foldedWords(looked).every((one) => inName.some((word) => word.startsWith(one)));
}

/** The spec book. */
export function SpecsScreen() {
  const [looked, setLooked] = useState("");
  const byName = new Intl.Collator(tongue.value.locale, { numeric: true, sensitivity: "base" });
  const book = [...specs.value].sort((a, b) => byName.compare(a.name, b.name));
  const shown = book.filter((spec) => isNamed(spec.name, looked));
  const missing = DEMO_SPECS.filter((demo) => !book.some((spec) => spec.id === demo.id));
  return (
    <main class="specs">
      <h1>{words.title}</h1>
      {book.length === 0 && <p class="specs-empty">{words.empty}</p>}
      <div class="specs-acts">
        <LinkButton tone={book.length === 0 ? "main" : "plain"} href={routes.spec("new")}>
          {words.newSpec}
        </LinkButton>
        <LinkButton href={routes.cupboard}>{words.cupboard}</LinkButton>
        <LinkButton href={routes.procedures}>{words.procedures}</LinkButton>
        <LinkButton href={routes.sums}>{sayLater.sums.title}</LinkButton>
      </div>
      {book.length > WORTH_SEARCHING && (
        <Field label={words.search} value={looked} keyboard="search" onInput={setLooked} />
      )}
      {book.length > 0 && shown.length === 0 && (
        <>
          <p role="status">{words.noneFound(looked)}</p>
          <TapButton onAct={() => setLooked("")}>{sayLater.empty.allSpecs}</TapButton>
        </>
      )}
      <ul class="specs-list">
        {shown.map((spec) => (
          <Entry key={spec.id} spec={spec} />
        ))}
      </ul>
      {missing.length > 0 && <DemoOffer missing={missing} />}
    </main>
  );
}
