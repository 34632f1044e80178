import { expect, test } from "vitest";
import { networkOf, startIn } from "../../../../core/board/schedule/network.ts";
import { latenessOf, searchLatest } from "../../../../core/board/schedule/search.ts";
import { at, hands, job, limits } from "./small-days.ts";

const label = (id: string, minutes: number) => job(id, 100, [hands("label", minutes)]);
const three = () => networkOf([label("a", 30), label("b", 10), label("c", 20)], limits(), 0);

test("of one person's jobs the longest goes first, so that most start late", () => {
  const network = three();
  const { starts, proved } = searchLatest(network, { goal: "latest", patience: 1000 });
  if (starts === undefined) throw new RangeError("there is a plan");
  expect(network.tasks.map((task) => startIn(starts, task))).toEqual([at(40), at(90), at(70)]);
  expect(latenessOf(network, starts)).toBe(at(200));
  expect(proved).toBe(true);
});

test("gives its bounds back", () => {
  const network = three();
  searchLatest(network, { goal: "latest", patience: 1000 });
  expect(network.tasks.flatMap(({ bounds }) => bounds)).toEqual([]);
});

test("says when it gave up, and keeps what it knew", () => {
  const network = three();
  const known = Float64Array.of(at(0), at(30), at(40));
  expect(searchLatest(network, { goal: "latest", patience: 0 })).toEqual({ proved: false });
  const kept = searchLatest(network, { goal: "latest", patience: 1, known });
  expect(kept).toEqual({ proved: false, starts: known });
  const bettered = searchLatest(network, { goal: "latest", patience: 1000, known });
  expect(bettered.starts && latenessOf(network, bettered.starts)).toBe(at(200));
});

test("any plan will do where that is the goal; none is proved where there is none", () => {
  const any = searchLatest(three(), { goal: "any", patience: 1000 });
  expect([any.starts?.length, any.proved]).toEqual([3, false]);
  const full = networkOf([label("a", 60), label("b", 60)], limits(), 0);
  expect(searchLatest(full, { goal: "any", patience: 1000 })).toEqual({ proved: true });
  const late = networkOf([label("a", 101)], limits(), 0);
  expect(searchLatest(late, { goal: "latest", patience: 0 })).toEqual({ proved: true });
});

test("jobs that have begun all through count for nothing", () => {
  const over = job("a", 100, [hands("label", 10, { fixedStart: 0 })]);
  const network = networkOf([over, label("b", 10)], limits(), 0);
  expect(latenessOf(network, Float64Array.of(0, at(90)))).toBe(at(90));
});
