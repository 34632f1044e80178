import { HANDS_ON } from "../../core/board/schedule/job-of.ts";
import type { Procedure } from "../../core/method/procedure.ts";
import { PROCEDURES } from "../../core/method/procedures.ts";
import { usualPath } from "../../core/method/usual-path.ts";
import { LinkButton } from "../parts/link-button.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { usersOf } from "../procedure-book.ts";
import { copyIntoForm } from "../procedure-drafts.ts";
import { routes } from "../routes.ts";
import { ownProcedures } from "../state.ts";
import { duration } from "../words/format.ts";
import { procedureName } from "../words/procedure-name.ts";
import { sayLater } from "../words/say-later.ts";
import { tongue } from "../words/tongue.ts";
import "./procedure.css";

const words = sayLater.procedures;

/** Its steps, and how long it takes when all goes well: a tasted wait to its hard stop. */
function sumOf(procedure: Procedure): string {
  const path = usualPath(procedure);
  const length = path.reduce(
    (sum, { longestFor, waitFor, handsFor }) =>
      sum + (longestFor ?? waitFor ?? handsFor ?? HANDS_ON),
    0,
  );
  // A wait that ends on what is seen is known only until somebody first looks.
  const open = path.some((step) => step.kind === "watched-wait" && step.longestFor === undefined);
  const say = open ? words.sumAtLeast : words.sum;
  return say(procedure.steps.length, duration(length));
}

function Entry({ procedure }: { readonly procedure: Procedure }) {
  const name = procedureName(procedure);
  const users = usersOf(procedure.id);
  return (
    <li class="procedure-entry">
      <h3>{name}</h3>
      <p>{sumOf(procedure)}</p>
      {users.length > 0 && <p class="procedure-sum">{words.usedBy(users.join(", "))}</p>}
      <div class="procedure-acts">
        <LinkButton href={routes.procedure(procedure.id)} name={words.open(name)}>
          {words.openIt}
        </LinkButton>
        <TapButton name={words.copyOf(name)} onAct={() => copyIntoForm(procedure)}>
          {words.copy}
        </TapButton>
      </div>
    </li>
  );
}

/** How things are made here: the house's own procedures, then those every house has. */
export function ProceduresScreen() {
  const byName = ownProcedures.value.toSorted((a, b) =>
    procedureName(a).localeCompare(procedureName(b), tongue.value.locale),
  );
  return (
    <main class="procedure">
      <LinkButton tone="quiet" href={routes.specs}>
        {words.toSpecs}
      </LinkButton>
      <h1>{words.title}</h1>
      <p>{words.why}</p>
      <section class="procedure-part">
        <h2>{words.own}</h2>
        {byName.length === 0 && <p>{words.ownNone}</p>}
        <ul class="procedure-list">
          {byName.map((one) => (
            <Entry key={one.id} procedure={one} />
          ))}
        </ul>
      </section>
      <section class="procedure-part">
        <h2>{words.shipped}</h2>
        <ul class="procedure-list">
          {PROCEDURES.map((one) => (
            <Entry key={one.id} procedure={one} />
          ))}
        </ul>
      </section>
    </main>
  );
}
