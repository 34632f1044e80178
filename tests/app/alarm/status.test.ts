import { expect, test } from "vitest";
import { type AlarmFacts, alarmStatus } from "../../../app/alarm/status.ts";

const HOUR = 3_600_000;
/** Never heard, heard three hours ago, heard exactly twelve hours ago, heard "in the future". */
const CHECKS = { never: null, fresh: 3 * HOUR, old: 12 * HOUR, future: -1 } as const;

const row = (facts: AlarmFacts) => {
  const { layer, code, missing, ifLeft } = alarmStatus(facts);
  return `${layer} | ${code} | ${missing.join(" ")} | if left: ${ifLeft}`;
};

/**
 * DESIGN section 5, every combination in sight and out of the phone's clock: what is missing.
 * Columns: the sound check never made, fresh, old.
 */
const MISSING: Readonly<Record<string, readonly [string, string, string]>> = {
  "running held": ["sound-unheard", "", "sound-check-old"],
  "running refused": [
    "sound-unheard screen-lock-refused",
    "screen-lock-refused",
    "sound-check-old screen-lock-refused",
  ],
  "running absent": [
    "sound-unheard screen-lock-absent",
    "screen-lock-absent",
    "sound-check-old screen-lock-absent",
  ],
  "blocked held": ["sound-blocked sound-unheard", "sound-blocked", "sound-blocked sound-check-old"],
  "blocked refused": [
    "sound-blocked sound-unheard screen-lock-refused",
    "sound-blocked screen-lock-refused",
    "sound-blocked sound-check-old screen-lock-refused",
  ],
  "blocked absent": [
    "sound-blocked sound-unheard screen-lock-absent",
    "sound-blocked screen-lock-absent",
    "sound-blocked sound-check-old screen-lock-absent",
  ],
  "absent held": ["no-sound", "no-sound", "no-sound"],
  "absent refused": [
    "no-sound screen-lock-refused",
    "no-sound screen-lock-refused",
    "no-sound screen-lock-refused",
  ],
  "absent absent": [
    "no-sound screen-lock-absent",
    "no-sound screen-lock-absent",
    "no-sound screen-lock-absent",
  ],
};

const SOUNDS = ["running", "blocked", "absent"] as const;
const SCREENS = ["held", "refused", "absent"] as const;
const COLUMNS = ["never", "fresh", "old"] as const;

const every = SOUNDS.flatMap((sound) =>
  SCREENS.flatMap((awake) =>
    COLUMNS.flatMap((check, column) =>
      [true, false].flatMap((visible) =>
        [true, false].map((inPhoneClock) => ({
          facts: { visible, sound, awake, heardAgo: CHECKS[check], inPhoneClock },
          here: MISSING[`${sound} ${awake}`]?.[column],
        })),
      ),
    ),
  ),
);

test("there are 108 combinations, and each has its cell in the table", () => {
  expect(every).toHaveLength(108);
  expect(every.filter(({ here }) => here === undefined)).toEqual([]);
});

test.each(every)("$facts", ({ facts, here }) => {
  const missing = [facts.visible ? "" : "out-of-sight", here].filter((one) => one).join(" ");
  const ifLeft = facts.inPhoneClock ? "phone-clock" : "nothing";
  const [layer, code] =
    missing === ""
      ? ["rings-here", facts.inPhoneClock ? "rings-here-and-phone-clock" : "rings-here"]
      : facts.inPhoneClock
        ? ["phone-clock", "phone-clock"]
        : ["rings-on-return", missing.split(" ")[0]];
  expect(row(facts)).toBe(`${layer} | ${code} | ${missing} | if left: ${ifLeft}`);
});

test("of the 108, exactly two say that it rings here", () => {
  const here = every.filter(({ facts }) => alarmStatus(facts).layer === "rings-here");
  expect(here.map(({ facts }) => facts)).toEqual(
    [true, false].map((inPhoneClock) => ({
      visible: true,
      sound: "running",
      awake: "held",
      heardAgo: CHECKS.fresh,
      inPhoneClock,
    })),
  );
});

test.each([
  [0, "rings-here"],
  [12 * HOUR - 1, "rings-here"],
  [12 * HOUR, "sound-check-old"],
  [CHECKS.future, "sound-check-old"],
])("a sound check %d ms ago gives %s", (heardAgo, code) => {
  const facts = { visible: true, sound: "running", awake: "held", inPhoneClock: false } as const;
  expect(alarmStatus({ ...facts, heardAgo }).code).toBe(code);
});
