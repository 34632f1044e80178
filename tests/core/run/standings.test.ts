import { expect, test } from "vitest";
import { standingsOf, standsNow } from "../../../core/run/standings.ts";
import { dripped, started } from "../../support/world/play-run.ts";

const AT = 1_000_000_000_000;
const MINUTE = 60_000;

test("where no step and nobody said so, it stands on the counter", () => {
  const { run } = started("r", "PB-1", AT);
  expect(standingsOf(run)).toEqual([]);
  expect(standsNow(run)).toBe("counter");
});

// The dairy wash: the curd settles on the counter, the drip stands in the fridge.
test("steps and people are read together, the latest last", () => {
  const resting = started("r", "PB-1", AT)
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: 1000 } }, 2)
    .finish({}, 5);
  const moved = resting.then({ type: "move-vessel", to: "fridge" }, 10);
  expect(standingsOf(moved.run)).toEqual([
    { from: AT + 27 * MINUTE, at: "counter" },
    { from: AT + 37 * MINUTE, at: "fridge" },
  ]);
  expect(standsNow(resting.run)).toBe("counter");
  expect(standsNow(moved.run)).toBe("fridge");
  expect(standsNow(dripped(started("r", "PB-1", AT)).run)).toBe("fridge");
});

test("a step that says nothing leaves it where it was put", () => {
  const frozen = started("r", "PB-1", AT).then({ type: "move-vessel", to: "freezer" });
  expect(standsNow(frozen.finish({}, 20).run)).toBe("freezer");
});

test("a later step takes it from where somebody had put it before", () => {
  const { run } = started("r", "PB-1", AT)
    .then({ type: "move-vessel", to: "fridge" })
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: 1000 } }, 2)
    .finish({}, 5);
  expect(standingsOf(run).map(({ at }) => at)).toEqual(["fridge", "counter"]);
  expect(standsNow(run)).toBe("counter");
});
