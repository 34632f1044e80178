import { type Gone, goneSince } from "../../../core/board/shelf.ts";
import { DAY } from "../../../core/quantity/time-units-table.ts";
import { minute } from "../../ahead/prep.ts";
import { LinkButton } from "../../parts/link-button.tsx";
import { routes } from "../../routes.ts";
import { records } from "../../state.ts";
import { dateYear } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const WEEK = 7 * DAY;
/** Who looks for more looks in the Logbook. Judgement. */
const MOST = 5;

function Line({ one }: { readonly one: Gone }) {
  const { runId, name, batch, ended } = one;
  return (
    <li class="shelf-gone">
      <p>
        <strong>
          {name} {batch}
        </strong>
        <br />
        {sayLater.stock.ended(ended.how, ended.reason)}, {dateYear(ended.at)}
      </p>
      <LinkButton href={routes.batch(runId)} name={sayLater.shelf.logOf(batch)}>
        {sayLater.shelf.log}
      </LinkButton>
    </li>
  );
}

/** What has left the shelf within a week, to be looked up or taken back. */
export function GoneLately() {
  const gone = goneSince(records.value, minute.value - WEEK).slice(0, MOST);
  if (gone.length === 0) return null;
  return (
    <section class="part">
      <h2>{sayLater.shelf.goneTitle}</h2>
      <ul class="shelf-nexts">
        {gone.map((one) => (
          <Line key={one.runId} one={one} />
        ))}
      </ul>
    </section>
  );
}
