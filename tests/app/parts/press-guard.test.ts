import { expect, test } from "vitest";
import { makePressGuard } from "../../../app/parts/press-guard.ts";

function guardWithEar() {
  const guard = makePressGuard();
  const heard: string[] = [];
  const stop = guard.listen((news) => heard.push(news));
  return { guard, heard, stop };
}

test("one contact is no news, a second is, a third again", () => {
  const { guard, heard } = guardWithEar();
  guard.touched(1, "touch", true);
  expect(heard).toEqual([]);
  guard.touched(2, "touch", false);
  guard.touched(3, "touch", false);
  expect(heard).toEqual(["another-contact", "another-contact"]);
  expect(guard.contacts()).toBe(3);
  guard.lifted(2);
  expect(guard.contacts()).toBe(2);
});

test("a contact whose lifting never came is forgotten at the next first one of its kind", () => {
  const { guard, heard } = guardWithEar();
  guard.touched(1, "touch", true);
  guard.touched(2, "touch", true);
  expect(guard.contacts()).toBe(1);
  expect(heard).toEqual([]);
});

test("a mouse beside a finger counts as a second contact", () => {
  const { guard, heard } = guardWithEar();
  guard.touched(1, "touch", true);
  guard.touched(9, "mouse", true);
  expect(heard).toEqual(["another-contact"]);
});

test("losing the page lifts every contact", () => {
  const { guard, heard } = guardWithEar();
  guard.touched(1, "touch", true);
  guard.lost();
  expect(guard.contacts()).toBe(0);
  expect(heard).toEqual(["lost"]);
});

test("the quiet lasts until the latest end, never shorter", () => {
  const { guard } = guardWithEar();
  expect(guard.quietUntil()).toBe(Number.NEGATIVE_INFINITY);
  guard.acted(1000, 350);
  guard.acted(1100, 120);
  expect(guard.quietUntil()).toBe(1350);
});

test("who stops listening hears no more", () => {
  const { guard, heard, stop } = guardWithEar();
  stop();
  guard.lost();
  expect(heard).toEqual([]);
});
