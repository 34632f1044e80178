import { expect, test } from "vitest";
import { type AlarmFacts, type AlsoWatched, alarmStatus } from "../../../app/alarm/status.ts";
import { say } from "../../../app/words/say.ts";

const HOUR = 3_600_000;
/** Never heard, heard three hours ago, heard exactly twelve hours ago, heard "in the future". */
const CHECKS = { never: null, fresh: 3 * HOUR, old: 12 * HOUR, future: -1 } as const;

const row = (facts: AlarmFacts) => {
  const { layer, code, missing } = alarmStatus(facts);
  return `${layer} | ${code} | ${missing.join(" ")}`;
};

/**
 * In sight, and nothing else watching: what is missing.
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

/**
 * What else watches the waits, and what of that holds for all of them. The phone's clock rings and a
 * person comes; writing on a vessel calls nobody, so it never stands for another watch.
 */
const WATCHED: readonly (readonly [AlarmFacts["waits"], AlsoWatched])[] = [
  [[], "nothing"],
  [[[]], "nothing"],
  [[["phone-clock"]], "phone-clock"],
  [[["person"]], "person"],
  [[["vessel"]], "vessel"],
  [[["vessel", "person"]], "person"],
  [[["person", "phone-clock", "vessel"]], "phone-clock"],
  [[["phone-clock"], []], "nothing"],
  [[["phone-clock"], ["phone-clock", "person"]], "phone-clock"],
  [[["phone-clock"], ["person"]], "several"],
  [
    [
      ["phone-clock", "vessel"],
      ["person", "vessel"],
    ],
    "several",
  ],
  [[["phone-clock"], ["vessel"]], "nothing"],
  [[["phone-clock", "vessel"], ["vessel"]], "vessel"],
  [[["person"], ["person"], ["vessel"]], "nothing"],
];

const every = SOUNDS.flatMap((sound) =>
  SCREENS.flatMap((awake) =>
    COLUMNS.flatMap((check, column) =>
      [true, false].flatMap((visible) =>
        WATCHED.map(([waits, also]) => ({
          facts: { visible, sound, awake, heardAgo: CHECKS[check], waits },
          here: MISSING[`${sound} ${awake}`]?.[column],
          also,
        })),
      ),
    ),
  ),
);

test("there are 756 combinations, and each has its cell in the table", () => {
  expect(every).toHaveLength(54 * WATCHED.length);
  expect(every).toHaveLength(756);
  expect(every.filter(({ here }) => here === undefined)).toEqual([]);
});

test("each says what holds, and no more", () => {
  for (const { facts, here, also } of every) {
    const missing = [facts.visible ? "" : "out-of-sight", here].filter((one) => one).join(" ");
    const calls = also !== "nothing" && also !== "vessel";
    const [layer, code] =
      missing === ""
        ? ["rings-here", also === "nothing" ? "rings-here" : `rings-here-and-${also}`]
        : calls
          ? ["watched-elsewhere", also]
          : ["rings-on-return", missing.split(" ")[0]];
    expect(row(facts), JSON.stringify(facts)).toBe(`${layer} | ${code} | ${missing}`);
  }
});

test("it says that it rings here only in sight, running, held, and heard in this shift", () => {
  const here = every.filter(({ facts }) => alarmStatus(facts).layer === "rings-here");
  expect(here.map(({ facts }) => facts)).toEqual(
    WATCHED.map(([waits]) => ({
      visible: true,
      sound: "running",
      awake: "held",
      heardAgo: CHECKS.fresh,
      waits,
    })),
  );
});

test("every code has one sentence of its own, and only what rings here promises it", () => {
  const sentences = Object.entries(say.alarm.status);
  const codes = new Set<string>(every.map(({ facts }) => alarmStatus(facts).code));
  // What is said before the part that rings is there at all.
  codes.add("no-bell");
  expect(new Set(sentences.map(([code]) => code))).toEqual(codes);
  for (const [code, sentence] of sentences) {
    expect(sentence.startsWith("Rings here"), code).toBe(code.startsWith("rings-here"));
    expect(sentence, code).toMatch(/^[A-Z].*[.]$/u);
  }
});

test.each([
  [0, "rings-here"],
  [12 * HOUR - 1, "rings-here"],
  [12 * HOUR, "sound-check-old"],
  [CHECKS.future, "sound-check-old"],
])("a sound check %d ms ago gives %s", (heardAgo, code) => {
  const facts = { visible: true, sound: "running", awake: "held", waits: [] } as const;
  expect(alarmStatus({ ...facts, heardAgo }).code).toBe(code);
});
