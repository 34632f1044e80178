import { useState } from "preact/hooks";
import { takeBackup } from "../../commands-backup.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import type { OpenedBackup } from "../../storage/backup/open.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { useLongWork, WorkLine } from "./long-work.tsx";

type Damaged = NonNullable<OpenedBackup["damage"]>;

interface SummaryProps {
  readonly opened: OpenedBackup;
  /** Hears how many records were added. */
  readonly onAdded: (count: number) => void;
}

/** The lines that would be left out, and why each; what they say is shown as text and nothing else. */
function Left({ left: { count, first } }: Pick<OpenedBackup, "left">) {
  const words = sayLater.kit.restore;
  if (count === 0) return null;
  return (
    <>
      <h3>{words.leftTitle}</h3>
      <ul class="kit-list kit-lines">
        {first.map((line) => (
          <li key={line.number}>{words.line(line.number, sentence(line))}</li>
        ))}
        {count > first.length && <li>{words.more(count - first.length)}</li>}
      </ul>
    </>
  );
}

function Counts({ opened }: Pick<SummaryProps, "opened">) {
  const words = sayLater.kit.restore;
  const { freshCount, known, left, startless } = opened;
  return (
    <div role="status">
      <ul class="kit-list">
        <li>{words.fresh(freshCount)}</li>
        <li>{words.known(known)}</li>
        {left.count > 0 && <li>{words.left(left.count)}</li>}
        {startless > 0 && <li>{words.startless(startless)}</li>}
      </ul>
    </div>
  );
}

/** What is wrong with a damaged file: it is used only after somebody was told and said so. */
function Damage({ damage: { lines, found } }: { readonly damage: Damaged }) {
  const words = sayLater.kit.restore;
  return (
    <p class="kit-fault" role="alert">
      {lines === found ? words.altered : words.missing(lines, found)}
    </p>
  );
}

/** What would happen, before it does; it is added on a hold, from a damaged file on a second one. */
export function Summary({ opened, onAdded }: SummaryProps) {
  const work = useLongWork({ goesOn: true });
  const [fault, setFault] = useState<string>();
  const [used, setUsed] = useState(false);
  const [stored, setStored] = useState(false);
  const words = sayLater.kit.restore;
  const { damage, freshCount, left } = opened;
  const asks = damage !== undefined && !used;
  const add = async () => {
    setFault(undefined);
    const onStored = () => setStored(true);
    const taken = await work.during((watch) => takeBackup(opened, watch, onStored));
    if (taken.ok) onAdded(taken.value.added);
    else setFault(sentence(taken));
  };
  const hold = asks
    ? { label: words.useRest, onAct: () => setUsed(true) }
    : { label: words.add(freshCount), onAct: () => void add() };
  return (
    <>
      {damage !== undefined && <Damage damage={damage} />}
      <Counts opened={opened} />
      <Left left={left} />
      {freshCount === 0 && <p>{words.nothing}</p>}
      {freshCount > 0 && work.progress === undefined && !stored && (
        <HoldButton
          key={hold.label}
          {...hold}
          hints={say.work.hints}
          size={asks ? "secondary" : "primary"}
          tone={asks ? "plain" : "main"}
        />
      )}
      <WorkLine
        work={work}
        says={stored ? words.settling : words.adding}
        begins={words.beginsAdding}
        bound={stored}
      />
      {fault !== undefined && (
        <p class="kit-fault" role="alert">
          {fault}
        </p>
      )}
    </>
  );
}
