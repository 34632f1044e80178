import { expect, test } from "vitest";
import { aboutBatch, stepName } from "../../../app/screens/batch/about.ts";
import { settings } from "../../../app/state.ts";
import { sayLater } from "../../../app/words/say-later.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { started } from "../../support/world/play-run.ts";

settings.value = { ...settings.value, volumes: "ml" };
const begun = started("a", "PB-2511", Date.parse("2025-11-25T10:00:00Z"));
const measured = begun.finish().finish({ answer: { of: "milk", ml: 880 } });
const actOf = (events: readonly RunEvent[]) => events.at(-1)?.act ?? "";

test("steps are named as on the run screen, rounds counted", () => {
  expect(stepName(begun.run, "re-pour#1")).toBe("Pour back");
  expect(stepName(begun.run, "re-pour#2")).toBe("Pour back, round 2");
  expect(stepName(begun.run, "moonrise#1")).toBe(sayLater.events.unknownStep);
});

test("an act is named by what was measured in it, else by the step it finished", () => {
  const about = aboutBatch(measured.run, measured.events);
  expect(about.act(actOf(measured.events))).toBe("Milk measured: 880 ml");
  expect(about.act(actOf(begun.finish().events))).toBe("Step finished: Build");
  expect(about.act("gone")).toBe(sayLater.events.unknownAct);
});

test("a log that takes itself back comes to an end", () => {
  const last = begun.events.at(-1);
  if (last === undefined) throw new RangeError("a start is two events");
  const loop: RunEvent = { ...last, id: "x", act: "x", type: "event.undone", undoes: "x" };
  const about = aboutBatch(begun.run, [...begun.events, loop]);
  expect(about.act("x")).toBe(`Taken back: ${sayLater.events.anUndo}`);
});

test("a line of the plan is named, one that is not there keeps its id", () => {
  const about = aboutBatch(begun.run, begun.events);
  expect(about.line("rum")).toBe("Aged pot-still rum 57 %");
  expect(about.line("gone")).toBe("gone");
});
