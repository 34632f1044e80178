import type { ComponentChildren } from "preact";
import type { Figure } from "../../../core/quantity/figure.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { routes } from "../../routes.ts";
import { settings } from "../../state.ts";
import { figureText } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import type { Answer, ReadSum } from "./read-sum.ts";

const words = sayLater.sums;

function Figures({ of, big }: { readonly of: readonly Figure[]; readonly big: boolean }) {
  if (of.length === 0) return null;
  return (
    <dl class={big ? "sums-main" : "sums-more"}>
      {of.map((one) => (
        <div key={one.name} class="sums-figure">
          <dt>{one.name}</dt>
          <dd>
            <FigureButton figure={one} style={settings.value} />
          </dd>
        </div>
      ))}
    </dl>
  );
}

function Rest({ answer }: { readonly answer: Answer }) {
  return (
    <>
      <Figures of={answer.more} big={false} />
      {answer.says.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {answer.cautions.map((line) => (
        <p key={line} class="sums-caution">
          {line}
        </p>
      ))}
    </>
  );
}

/** The answer as it is read out, without the buttons it is made of. */
function spoken({ headline, main }: Answer): string {
  const figures = main.map((one) => `${one.name} ${figureText(one, settings.value)}`);
  return [...(headline === undefined ? [] : [headline]), ...figures].join(", ");
}

/** A figure that stands there already gives way to the one that is typed. */
function selectAll(event: FocusEvent): void {
  if (event.target instanceof HTMLInputElement) event.target.select();
}

interface SumPageProps {
  readonly title: string;
  readonly read: ReadSum;
  readonly children: ComponentChildren;
}

/** One sum: its fields, the answer that stays in sight, and what goes with it. */
export function SumPage({ title, read, children }: SumPageProps) {
  const { answer, cannot } = read;
  return (
    <main class="sums">
      <LinkButton tone="quiet" href={routes.sums}>
        {words.all}
      </LinkButton>
      <h1>{title}</h1>
      <form class="sums-form" onFocusIn={selectAll} onSubmit={(event) => event.preventDefault()}>
        {children}
      </form>
      <section class="sums-answer" aria-label={words.answer}>
        <p class="visually-hidden" role="status">
          {answer !== undefined && spoken(answer)}
        </p>
        {answer === undefined ? (
          <p class={cannot === undefined ? "sums-waiting" : "sums-cannot"}>
            {cannot ?? words.waiting}
          </p>
        ) : (
          <>
            {answer.headline !== undefined && <p class="sums-headline">{answer.headline}</p>}
            <Figures of={answer.main} big />
          </>
        )}
      </section>
      {answer !== undefined && <Rest answer={answer} />}
    </main>
  );
}
