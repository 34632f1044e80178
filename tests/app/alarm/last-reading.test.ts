import { expect, test } from "vitest";
import { lastReading } from "../../../app/alarm/last-reading.ts";
import { started } from "../../support/world/play-run.ts";

const AT = 1_000_000_000_000;
const MINUTE = 60_000;

test("the latest moment that this phone wrote, not that of another", () => {
  const { events } = started("r", "PB-1", AT).finish({}, 20, "phone-b");
  expect(lastReading(events, "phone-a")).toBe(AT);
  expect(lastReading(events, "phone-b")).toBe(AT + 20 * MINUTE);
  expect(lastReading(events, "phone-c")).toBeUndefined();
  expect(lastReading([], "phone-a")).toBeUndefined();
});

test("what was written after another phone's faster clock says nothing of this one's", () => {
  const log = started("r", "PB-1", AT)
    .finish({}, 20, "phone-b")
    // Ten minutes behind the other phone: written down as no earlier than the event before it.
    .finish({ answer: { of: "milk", ml: 1000 } }, -10, "phone-a");
  expect(log.events.at(-1)?.at).toBe(AT + 20 * MINUTE);
  expect(lastReading(log.events, "phone-a")).toBe(AT);
});

test("a clock that went back says nothing until its answer, and then where it stands", () => {
  const before = started("r", "PB-1", AT).finish({}, 20);
  const after = before.then({ type: "add-note", text: "late" }, -60);
  expect(lastReading(after.events, "phone-a")).toBe(AT + 20 * MINUTE);
  const settled = after.then({ type: "shift-clock", byMs: -60 * MINUTE, keepElapsed: true }, 1);
  expect(lastReading(settled.events, "phone-a")).toBe(AT - 39 * MINUTE);
});
