import { useEffect } from "preact/hooks";
import { DemoHistory } from "../../demo/history/offer.tsx";
import { Practise } from "../../demo/practice/offer.tsx";
import { everyRecord } from "../../reading.ts";
import { planned, records, recordsRead, specs } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import "./first-start.css";

/** Whether anything of the house's own stands on this phone; invented specs are not. */
const isBegun = (): boolean =>
  records.value.length > 0 ||
  planned.value.length > 0 ||
  specs.value.some(({ demo }) => demo !== true);

/** What the app is for, a wash to practise on and an invented past to look at: until work begins. */
export function FirstStart() {
  useEffect(() => {
    everyRecord().catch(() => undefined);
  }, []);
  if (!recordsRead.value || isBegun()) return null;
  const words = sayLater.first;
  return (
    <section class="first-start">
      <h2>{words.title}</h2>
      <p>{words.what}</p>
      <Practise />
      <DemoHistory />
    </section>
  );
}
