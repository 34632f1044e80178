import { expect, test } from "vitest";
import { Ringer } from "../../../app/alarm/ring.ts";
import { fakeVoice, phone } from "../../support/phone/fake-voices.ts";

test("blocked until a tap opens it, then running", () => {
  const { ringer, web } = phone();
  expect(ringer.soundState()).toBe("blocked");
  ringer.prepareSound();
  expect(ringer.soundState()).toBe("blocked");
  web.become("running");
  expect(ringer.soundState()).toBe("running");
});

test("a phone with neither voice says so and does not fail", () => {
  const { ringer } = phone({ hasWeb: false, hasMedia: false });
  ringer.prepareSound();
  ringer.startRinging("do");
  ringer.playOnce("do");
  expect(ringer.soundState()).toBe("absent");
});

test("without Web Audio the other voice is the fact", () => {
  const { ringer, media, since } = phone({ hasWeb: false });
  expect(ringer.soundState()).toBe("blocked");
  ringer.prepareSound();
  media.become("running");
  expect(ringer.soundState()).toBe("running");
  since();
  ringer.startRinging("look");
  expect(since()).toEqual(["session playback", "media loop look"]);
});

test("rings once for a kind, anew for another, and is hushed", () => {
  const { ringer, web, since } = phone();
  ringer.prepareSound();
  web.become("running");
  since();
  ringer.startRinging("look");
  ringer.startRinging("look");
  expect(since()).toEqual(["session playback", "web loop look"]);
  ringer.startRinging("do");
  expect(since()).toEqual(["web hush", "session playback", "web loop do"]);
  ringer.stopRinging();
  ringer.stopRinging();
  expect(since()).toEqual(["web hush"]);
});

test("a late alarm after a reload tries every voice before any tap", () => {
  const { ringer, web, since } = phone();
  ringer.startRinging("do");
  expect(since()).toEqual([
    "media made",
    "session playback",
    "web made",
    "web wake",
    "media loop do",
  ]);
  web.become("running");
  expect(since()).toEqual(["media hush", "web loop do"]);
});

test("a tap while a blocked alarm rings begins the sound again inside the tap", () => {
  const { ringer, since } = phone();
  ringer.startRinging("do");
  since();
  ringer.prepareSound();
  expect(since()).toEqual(["session playback", "web wake", "media loop do"]);
});

test("a tap while it already sounds changes nothing that is heard", () => {
  const { ringer, web, since } = phone();
  ringer.prepareSound();
  web.become("running");
  ringer.startRinging("do");
  since();
  ringer.prepareSound();
  expect(since()).toEqual(["session playback", "web wake"]);
});

test("interrupted while ringing, the other voice takes over and hands back", () => {
  const { ringer, web, since } = phone();
  ringer.prepareSound();
  web.become("running");
  ringer.startRinging("do");
  since();
  web.become("stopped");
  expect(since()).toEqual(["web hush", "media loop do"]);
  expect(ringer.soundState()).toBe("blocked");
  web.become("running");
  expect(since()).toEqual(["media hush", "web loop do"]);
});

test("taken away by a call, it is asked back without a tap, and made anew in one", () => {
  const { ringer, web, since } = phone();
  ringer.prepareSound();
  web.become("running");
  ringer.startRinging("do");
  since();
  web.become("interrupted");
  expect(since()).toEqual(["web hush", "media loop do"]);
  expect(ringer.soundState()).toBe("blocked");
  ringer.reviveSound();
  expect(since()).toEqual(["session playback", "web wake"]);
  ringer.prepareSound();
  const renewed = ["session playback", "web close", "web made", "web wake", "media loop do"];
  expect(since()).toEqual(renewed);
  web.become("running");
  expect(since()).toEqual(["media hush", "web loop do"]);
  expect(ringer.soundState()).toBe("running");
});

test("a call that ends gives the voice back as it was", () => {
  const { ringer, web, since } = phone();
  ringer.prepareSound();
  web.become("running");
  web.become("interrupted");
  web.become("running");
  since();
  ringer.startRinging("look");
  expect(since()).toEqual(["session playback", "web loop look"]);
});

test("a closed context is replaced on return", () => {
  const { ringer, web, since } = phone();
  ringer.prepareSound();
  web.become("dead");
  expect(ringer.soundState()).toBe("blocked");
  since();
  ringer.reviveSound();
  expect(since()).toContain("web made");
});

test("the sound check uses the voice that will ring, and never over an alarm", () => {
  const { ringer, since } = phone();
  ringer.playOnce("done");
  expect(since()).toContain("web once done");
  ringer.startRinging("do");
  since();
  ringer.playOnce("done");
  expect(since()).toEqual([]);
});

test("at rest the speaker is given back", () => {
  const { ringer, web, since } = phone();
  ringer.prepareSound();
  web.become("running");
  since();
  ringer.restSound();
  expect(since()).toEqual(["web rest", "media rest", "session auto"]);
});

test("a phone that gives out no speaker rings with the other voice, and is asked again", () => {
  const told: string[] = [];
  const media = fakeVoice("media", told);
  const web = fakeVoice("web", told);
  let free = false;
  const ringer = new Ringer({
    web: (hear) => {
      if (!free) throw new DOMException("no hardware context", "NotSupportedError");
      return web.make(hear);
    },
    media: media.make,
    session: null,
    onChange: () => {},
  });
  ringer.startRinging("do");
  expect(told).toContain("media loop do");
  expect(ringer.soundState()).toBe("blocked");
  free = true;
  ringer.prepareSound();
  web.become("running");
  expect(ringer.soundState()).toBe("running");
});
