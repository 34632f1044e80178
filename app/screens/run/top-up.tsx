import { useState } from "preact/hooks";
import type { Run, Visit } from "../../../core/run/run.ts";
import { type TopUpAdvice, topUpAdvice } from "../../../core/run/top-up-advice.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { abv, percent, volume } from "../../words/format.ts";
import { named } from "../../words/joined.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { AmountPad } from "./amount-pad.tsx";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

const show = (ml: number): string => volume(ml, settings.value);

/** Why the amount is what it is. */
function reasonOf(run: Run, advice: TopUpAdvice): string {
  const words = sayLater.run.topUp;
  if (advice.planned === 0) return words.none;
  if (advice.refusal !== undefined) return words.refused(abv(advice.strength));
  const share = percent(advice.yieldShare);
  switch (run.plan.spec.topUp.rule) {
    case "fixed":
      return words.fixed;
    case "strength":
      return words.strength(share, abv(advice.strength));
    case "proportion":
      return Math.abs(advice.yieldShare - 1) < 0.005 ? words.same : words.proportion(share);
  }
}

/** The amount to pour now beside the planned one, and why they differ. */
export function Advice({ run }: { readonly run: Run }) {
  const advice = topUpAdvice(run);
  const words = sayLater.run.topUp;
  return (
    <div class="run-advice">
      <dl class="run-pair">
        <div>
          <dt>{words.planned}</dt>
          <dd>{show(advice.planned)}</dd>
        </div>
        <div class="run-pair-now">
          <dt>{words.now}</dt>
          <dd>{show(advice.advised)}</dd>
        </div>
      </dl>
      <p class="run-fact">{reasonOf(run, advice)}</p>
      <p class="run-fact">{words.result(abv(advice.strength))}</p>
      {advice.beyondHeldBack >= 1 && (
        <p class="run-fact run-strong">{words.beyond(show(advice.beyondHeldBack))}</p>
      )}
    </div>
  );
}

/** The held-back spirit, recomputed from the yield that was measured. */
export function TopUpWork({ run, visit }: WorkProps) {
  const [pad, setPad] = useState(false);
  const advice = topUpAdvice(run);
  const take = (ml: number) =>
    act(
      run.id,
      { type: "finish-step", visit: visit.key, answer: { of: "top-up", ml } },
      named(sayLater.run.pads["top-up"], show(ml)),
    );
  if (pad) return <AmountPad what="top-up" onTake={take} onClose={() => setPad(false)} />;
  const label =
    advice.advised > 0 ? sayLater.run.asPlanned(show(advice.advised)) : sayLater.run.topUp.nothing;
  return (
    <div class="run-actions">
      <TapButton onAct={() => setPad(true)}>{sayLater.run.otherAmount}</TapButton>
      <HoldButton label={label} hints={say.work.hints} onAct={() => take(advice.advised)} />
    </div>
  );
}
