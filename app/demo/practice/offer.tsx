import { useState } from "preact/hooks";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";
import { Offer } from "../offer.tsx";
import { practiceId, startPractice } from "./start.ts";

/** Offers a wash to walk through, its waits cut to seconds. */
export function Practise() {
  const [fault, setFault] = useState<string>();
  // Tapped again while a slow phone stores it, it must not begin a second one.
  const [id] = useState(practiceId);
  const words = sayLater.first;
  return (
    <Offer why={words.practiseWhy} fault={fault}>
      <TapButton onAct={() => void startPractice(id).then(setFault)}>{words.practise}</TapButton>
    </Offer>
  );
}
