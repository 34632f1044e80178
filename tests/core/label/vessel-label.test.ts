import { expect, test } from "vitest";
import { vesselLabelOf } from "../../../core/label/vessel-label.ts";
import { started } from "../../support/world/play-run.ts";

const AT = 1_000_000_000_000;
const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

const resting = started("r", "PB-1003", AT)
  .finish({}, 20)
  .finish({ answer: { of: "milk", ml: 1000 } }, 2)
  .finish({}, 5);

test("a vessel that waits says what it is, since when and until when", () => {
  const label = vesselLabelOf(resting.run);
  expect(label).toMatchObject({
    batch: "PB-1003",
    name: "Pear Beacon",
    since: AT + 27 * MINUTE,
    dueAt: AT + 27 * MINUTE + HOUR,
    stands: "counter",
  });
  expect(label?.step.id).toBe("curdle");
  expect(label?.allergens).toContain("milk");
});

test("it says so where it was put into the cold", () => {
  const { run } = resting.then({ type: "move-vessel", to: "freezer" });
  expect(vesselLabelOf(run)?.stands).toBe("freezer");
});

test("the due time is the next moment that it asks", () => {
  const heard = resting.then({ type: "hear-alarm", visit: "curdle#1", dueAt: 0 }, 60);
  expect(vesselLabelOf(heard.run)?.dueAt).toBe(AT + 87 * MINUTE + 15 * MINUTE);
});

test("no label where nothing is waited for, or nobody works on it", () => {
  expect(vesselLabelOf(started("r", "PB-1", AT).run)).toBeUndefined();
  expect(vesselLabelOf(resting.then({ type: "pause" }).run)).toBeUndefined();
});
