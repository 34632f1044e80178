import { expect, test } from "vitest";
import { localOf } from "../../../../app/local-time.ts";
import { limitsOf } from "../../../../core/board/schedule/room.ts";

const ROOM = {
  people: 2,
  filterStands: 3,
  fridge: 40,
  freezer: 0,
  hours: { from: "10:00", to: "22:00" },
};
const at = (iso: string): number => Date.parse(iso);
const over = { from: at("2025-11-24T12:00:00Z"), to: at("2025-11-25T12:00:00Z") };

test("everything the house has, and nobody in at night", () => {
  expect(limitsOf(ROOM, over, "UTC", localOf)).toEqual({
    capacity: { person: 2, "filter-stand": 3, fridge: 40, freezer: 0 },
    taken: [
      {
        resource: "person",
        amount: 2,
        from: at("2025-11-24T22:00:00Z"),
        to: at("2025-11-25T10:00:00Z"),
      },
    ],
  });
});

test("a house that is always in has nothing taken", () => {
  const always = { ...ROOM, hours: { from: "00:00", to: "00:00" } };
  expect(limitsOf(always, over, "UTC", localOf).taken).toEqual([]);
});
