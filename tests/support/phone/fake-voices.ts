import { Ringer } from "../../../app/alarm/ring.ts";
import type { Voice } from "../../../app/alarm/voice.ts";

/** A voice moved by hand, which writes down what it was told. */
export function fakeVoice(name: string, told: string[]) {
  let state: ReturnType<Voice["state"]> = "stopped";
  let played = 0;
  let hear = () => {};
  const voice: Voice = {
    state: () => state,
    played: () => played,
    wake: () => told.push(`${name} wake`),
    loop: (kind) => told.push(`${name} loop ${kind}`),
    once: (kind) => told.push(`${name} once ${kind}`),
    hush: () => told.push(`${name} hush`),
    rest: () => told.push(`${name} rest`),
    close: () => told.push(`${name} close`),
  };
  return {
    make: (onChange: () => void) => {
      told.push(`${name} made`);
      hear = onChange;
      return voice;
    },
    become: (next: typeof state) => {
      state = next;
      hear();
    },
    play: (seconds: number) => {
      played += seconds;
    },
  };
}

/** A phone with one or two such voices, and what they were told since it was last asked. */
export function phone({ hasWeb = true, hasMedia = true } = {}) {
  const told: string[] = [];
  const web = fakeVoice("web", told);
  const media = fakeVoice("media", told);
  const ringer = new Ringer({
    web: hasWeb ? web.make : null,
    media: hasMedia ? media.make : null,
    session: (wish) => told.push(`session ${wish}`),
    onChange: () => {},
  });
  const since = () => told.splice(0);
  return { ringer, web, media, told, since };
}
