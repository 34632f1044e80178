import { useState } from "preact/hooks";
import { strengthOf } from "../../core/liquid/liquid.ts";
import { refused } from "../../core/quantity/result.ts";
import { foldedWords } from "../../core/spec/find-ingredient.ts";
import { sizelessPlan } from "../../core/spec/sizeless-plan.ts";
import type { Spec } from "../../core/spec/spec.ts";
import { saveSpecs } from "../commands.ts";
import { DEMO_SPEC_IDS, demoSpecs } from "../demo/specs.ts";
import { demoWords } from "../demo/words.ts";
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

/** What a spec comes to in the bottle, or why it comes to nothing yet. */
function summaryOf(spec: Spec): string {
  const plan = sizelessPlan(spec, cupboard.value, settings.value.ounce);
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
function DemoOffer({ missing }: { readonly missing: readonly string[] }) {
  const [refusal, setRefusal] = useState<string>();
  const put = async () => {
    const told = await demoWords();
    const written =
      told === undefined
        ? refused("part-missing")
        : await saveSpecs(demoSpecs(told).filter(({ id }) => missing.includes(id)));
    setRefusal(written.ok ? undefined : sentence(written));
  };
  const whole = missing.length === DEMO_SPEC_IDS.length;
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
  const missing = DEMO_SPEC_IDS.filter((id) => !book.some((spec) => spec.id === id));
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
