import { useEffect } from "preact/hooks";
import { DemoHistory } from "../../demo/history/offer.tsx";
import { Practise } from "../../demo/practice/offer.tsx";
import { everyRecord } from "../../reading.ts";
import { records, recordsRead } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import "./first-start.css";

/** What the app is for, a wash to practise on and an invented past to look at: until the first batch. */
export function FirstStart() {
  useEffect(() => {
    everyRecord().catch(() => undefined);
  }, []);
  if (!recordsRead.value || records.value.length > 0) return null;
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
