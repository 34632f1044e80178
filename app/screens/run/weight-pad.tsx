import { useState } from "preact/hooks";
import type { Run } from "../../../core/run/run.ts";
import { tareOf, vesselOf, type Weighable, weigh } from "../../../core/run/weigh.ts";
import { saveSettings } from "../../commands.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { mass, typed, volume } from "../../words/format.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { FigurePad } from "./figure-pad.tsx";

export interface Scale {
  readonly run: Run;
  readonly what: Weighable;
  /** Takes what the scale shows, g; answers with a sentence when it is refused. */
  readonly onWeigh: (gross: number) => Promise<string | undefined>;
}

/** The empty vessel, weighed once: it stays with the batch, and is proposed for the next one. */
function TarePad({ run, what, onNoted }: Scale & { readonly onNoted: () => void }) {
  const words = sayLater.drip.weigh;
  const vessel = vesselOf(what);
  const last = settings.value.tares[vessel];
  const note = async (grams: number) => {
    const refused = await act(
      run.id,
      { type: "note-tare", vessel, grams },
      words.tareIs(mass(grams)),
    );
    if (refused !== undefined) return refused;
    // The batch holds it already: a proposal for the next one that is not stored loses nothing.
    void saveSettings({ tares: { ...settings.value.tares, [vessel]: grams } });
    onNoted();
    return undefined;
  };
  return (
    <FigurePad
      label={words.tare[vessel]}
      unit={words.unit}
      start={last === undefined ? "" : typed(last)}
      note={() => (last === undefined ? words.tareHint : words.tareLast(mass(last)))}
      onTake={note}
    />
  );
}

/** What the figure means so far: nothing while it is less than the vessel alone. */
function Net({ run, what, gross }: Pick<Scale, "run" | "what"> & { gross: number | undefined }) {
  const words = sayLater.drip.weigh;
  const weight = gross === undefined ? undefined : weigh(run, what, gross);
  if (weight?.ok !== true) return words.vesselIs(mass(tareOf(run, vesselOf(what)) ?? 0));
  const { ml, weighed } = weight.value;
  const net = weighed.gross - weighed.tare;
  return words.net(mass(weighed.gross), mass(weighed.tare), mass(net), volume(ml, settings.value));
}

/** A volume by its weight on a scale, its vessel with it. */
export function WeightPad(props: Scale) {
  const { run, what, onWeigh } = props;
  const [again, setAgain] = useState(false);
  const words = sayLater.drip.weigh;
  const take = async (gross: number) => {
    const weight = weigh(run, what, gross);
    const nothing = weight.ok && weight.value.ml === 0 && what === "yield";
    return nothing ? sentence({ refusal: "amount-not-positive", about: {} }) : onWeigh(gross);
  };
  if (again || tareOf(run, vesselOf(what)) === undefined) {
    return <TarePad key="tare" {...props} onNoted={() => setAgain(false)} />;
  }
  return (
    <FigurePad
      key="gross"
      label={words.gross}
      unit={words.unit}
      note={(gross) => <Net run={run} what={what} gross={gross} />}
      aside={
        <TapButton size="least" tone="quiet" onAct={() => setAgain(true)}>
          {words.other}
        </TapButton>
      }
      onTake={take}
    />
  );
}
