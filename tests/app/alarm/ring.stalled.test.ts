import { expect, test } from "vitest";
import { phone } from "../../support/phone/fake-voices.ts";

test("a voice that says it runs but plays nothing is found, and made anew in a tap", () => {
  const { ringer, web, since } = phone();
  ringer.prepareSound();
  web.become("running");
  ringer.checkSound(1000);
  web.play(1);
  ringer.checkSound(2000);
  expect(ringer.soundState()).toBe("running");
  ringer.checkSound(3000);
  expect(ringer.soundState()).toBe("blocked");
  since();
  ringer.prepareSound();
  expect(since()).toEqual(["session playback", "web close", "web made", "web wake", "media wake"]);
  expect(ringer.soundState()).toBe("running");
});

test("a stalled voice that plays again is believed again", () => {
  const { ringer, web } = phone();
  ringer.prepareSound();
  web.become("running");
  ringer.checkSound(1000);
  ringer.checkSound(2000);
  expect(ringer.soundState()).toBe("blocked");
  web.play(1);
  ringer.checkSound(3000);
  expect(ringer.soundState()).toBe("running");
});

test("what was not played while out of sight is not held against the voice", () => {
  const { ringer, web } = phone();
  ringer.prepareSound();
  web.become("running");
  ringer.checkSound(1000);
  ringer.reviveSound();
  ringer.checkSound(3_600_000);
  expect(ringer.soundState()).toBe("running");
});

test("two looks in quick succession say nothing", () => {
  const { ringer, web } = phone();
  ringer.prepareSound();
  web.become("running");
  ringer.checkSound(1000);
  ringer.checkSound(1399);
  expect(ringer.soundState()).toBe("running");
});
