import { useState } from "preact/hooks";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";
import { Offer } from "../offer.tsx";
import { startPractice } from "./start.ts";

/** Offers a wash to walk through, its waits cut to seconds. */
export function Practise() {
  const [fault, setFault] = useState<string>();
  const words = sayLater.first;
  return (
    <Offer why={words.practiseWhy} fault={fault}>
      <TapButton onAct={() => void startPractice().then(setFault)}>{words.practise}</TapButton>
    </Offer>
  );
}
