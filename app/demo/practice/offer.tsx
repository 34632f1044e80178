import { useState } from "preact/hooks";
import { TapButton } from "../../parts/tap-button.tsx";
import { sayLater } from "../../words/say-later.ts";
import { startPractice } from "./start.ts";

/** Offers a wash to walk through, its waits cut to seconds. */
export function Practise() {
  const [fault, setFault] = useState<string>();
  const words = sayLater.first;
  return (
    <div class="practise">
      <p>{words.practiseWhy}</p>
      <TapButton onAct={() => void startPractice().then(setFault)}>{words.practise}</TapButton>
      {fault !== undefined && <p role="alert">{fault}</p>}
    </div>
  );
}
