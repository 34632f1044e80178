import { expect, test } from "vitest";
import { type Look, type Part, setPart } from "../../../core/label/set-part.ts";
import { typeWidth } from "../../../core/label/type-width.ts";

const LOOKS: readonly Look[] = ["title", "boxed", "barred", "strong", "plain"];
const ROOM = { x: 2, y: 3, width: 58 };
const usual = { type: 3, close: false };
const part = (look: Look, text: string): Part => ({ key: "a", look, text, rank: 0 });
const sizes = (of: ReturnType<typeof setPart>) =>
  of.marks.flatMap((mark) => (mark.type === "text" ? mark.size : []));

test("a name is large while it is short, shrinks, and wraps only at its least size", () => {
  const set = (text: string) => setPart(part("title", text), ROOM, usual, typeWidth);
  expect(sizes(set("Pear"))).toEqual([1.8 * 3]);
  const [longer = 0, ...rest] = sizes(set("Pear Beacon of the Harbour"));
  expect(rest).toEqual([]);
  expect(longer).toBeLessThan(1.8 * 3);
  expect(longer).toBeGreaterThan(1.25 * 3);
  const wrapped = sizes(set("Pear Beacon of the Harbour and of Everything Behind It"));
  expect(wrapped.length).toBeGreaterThan(1);
  expect(new Set(wrapped)).toEqual(new Set([1.25 * 3]));
});

test.each(LOOKS)("%s: all that is drawn lies in the room it says it takes", (look) => {
  const long = "Contains CEREALS WITH GLUTEN, CRUSTACEANS, EGG, FISH, PEANUT, SOY, MILK";
  for (const close of [false, true]) {
    const set = setPart(
      { ...part(look, long), lead: "Ahead" },
      ROOM,
      { type: 3, close },
      typeWidth,
    );
    expect(set.marks.length).toBeGreaterThan(1);
    for (const mark of set.marks) {
      if (mark.type === "code") throw new RangeError("a part draws no code");
      const [top, foot] =
        mark.type === "text"
          ? [mark.y - 0.93 * mark.size, mark.y + 0.21 * mark.size]
          : [mark.y, mark.y + mark.height];
      expect(mark.x).toBeGreaterThanOrEqual(ROOM.x - 1e-9);
      expect(mark.x + mark.width).toBeLessThanOrEqual(ROOM.x + ROOM.width + 1e-9);
      expect(top).toBeGreaterThanOrEqual(ROOM.y - 1e-9);
      expect(foot).toBeLessThanOrEqual(ROOM.y + set.height + 1e-9);
    }
  }
});

test("a broken word and a box of two lines are untidy", () => {
  const tidy = (look: Look, text: string) => setPart(part(look, text), ROOM, usual, typeWidth).tidy;
  expect(tidy("boxed", "Mon, 1 Dec 2025")).toBe(true);
  expect(tidy("boxed", "Monday, the first of December of the year 2025")).toBe(false);
  expect(tidy("plain", "two lines of it are quite all right, for they break at spaces")).toBe(true);
  expect(tidy("plain", "M".repeat(60))).toBe(false);
});
