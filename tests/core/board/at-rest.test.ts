import { expect, test } from "vitest";
import { atRest, BEFORE_ALARM } from "../../../core/board/at-rest.ts";
import { alarmsOf } from "../../../core/run/alarm.ts";
import { madeWhole, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const building = started("a", "A", MADE);
const resting = started("b", "B", MADE)
  .finish({}, 1)
  .finish({ answer: { of: "milk", ml: 1000 } }, 1)
  .finish({}, 1);
const due = alarmsOf(resting.run)[0]?.dueAt ?? Number.NaN;
const ended = madeWhole(started("c", "C", MADE), { yield: 3700, topUp: 450, useBy: MADE });

test("with nothing on the bench, or only what has ended, all is at rest", () => {
  expect(atRest([], MADE)).toBe(true);
  expect(atRest([ended.run], MADE)).toBe(true);
});

test("work in hand is never interrupted, however far its alarms", () => {
  expect(alarmsOf(building.run)).toEqual([]);
  expect(atRest([building.run], MADE)).toBe(false);
  expect(atRest([resting.run, building.run], due - 2 * BEFORE_ALARM)).toBe(false);
});

test("a wait may be left until half an hour before its alarm", () => {
  expect(atRest([resting.run], due - BEFORE_ALARM - 1)).toBe(true);
  expect(atRest([resting.run], due - BEFORE_ALARM)).toBe(false);
  expect(atRest([resting.run], due + 1)).toBe(false);
});

test("what was set aside asks for nobody", () => {
  expect(atRest([building.then({ type: "pause" }).run], MADE)).toBe(true);
});
