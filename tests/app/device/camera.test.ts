import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { cameraWith } from "../../../app/device/camera.ts";

/** A stream whose one track says whether it still runs. */
class Stream {
  running = true;
  getTracks() {
    return [
      {
        stop: () => {
          this.running = false;
        },
      },
    ];
  }
}

const given: Stream[] = [];
let answer: (how: "granted" | DOMException) => void;
let sight: DocumentVisibilityState;
let page: EventTarget;
let codes: readonly string[];
let waiting: (() => void)[];

const see = async (next: DocumentVisibilityState) => {
  sight = next;
  page.dispatchEvent(new Event("visibilitychange"));
  await settled();
};
/** Until all that was begun has come to rest. */
const settled = async () => {
  for (let turns = 0; turns < 20; turns += 1) await Promise.resolve();
};
const running = () => given.filter((one) => one.running).length;
const again = (_ms: number, call: () => void) => void waiting.push(call);
const video = (play = async () => undefined) => {
  const shown: { srcObject: unknown; play: () => Promise<undefined> } = { srcObject: null, play };
  return shown;
};

beforeEach(() => {
  given.length = 0;
  codes = ["2P/code"];
  waiting = [];
  sight = "visible";
  page = new EventTarget();
  Object.defineProperty(page, "visibilityState", { get: () => sight });
  class BarcodeDetector {
    static getSupportedFormats = async () => ["qr_code"];
    detect = async () => codes.map((rawValue) => ({ rawValue }));
  }
  vi.stubGlobal("MediaStream", Stream);
  vi.stubGlobal("document", page);
  vi.stubGlobal("window", { BarcodeDetector });
  vi.stubGlobal("navigator", {
    mediaDevices: {
      getUserMedia: () =>
        new Promise<Stream>((resolve, reject) => {
          answer = (how) => {
            if (how !== "granted") return reject(how);
            const stream = new Stream();
            given.push(stream);
            resolve(stream);
          };
        }),
    },
  });
});
afterEach(() => vi.unstubAllGlobals());

function open(play?: () => Promise<undefined>) {
  const camera = cameraWith(again);
  const seen: string[] = [];
  const screen = video(play);
  const outcome = Reflect.apply(camera.watch, camera, [screen, (text: string) => seen.push(text)]);
  return { camera, seen, outcome };
}

test("what it sees is told, until it is stopped", async () => {
  const { camera, seen, outcome } = open();
  answer("granted");
  expect(await outcome).toBe("watching");
  await settled();
  expect(seen).toEqual(["2P/code"]);
  waiting.shift()?.();
  await settled();
  expect(seen).toEqual(["2P/code", "2P/code"]);
  camera.stop();
  expect(running()).toBe(0);
  waiting.shift()?.();
  await settled();
  expect(seen).toHaveLength(2);
});

test("a screen that was left while the phone still asked lets the camera go at once", async () => {
  const { camera, seen, outcome } = open();
  camera.stop();
  answer("granted");
  await outcome;
  await settled();
  expect(given).toHaveLength(1);
  expect(running()).toBe(0);
  expect(seen).toEqual([]);
});

test("out of sight it is off, and back in sight it looks again", async () => {
  const { camera, outcome } = open();
  answer("granted");
  await outcome;
  await see("hidden");
  expect(running()).toBe(0);
  await see("visible");
  answer("granted");
  await settled();
  expect(running()).toBe(1);
  camera.stop();
  expect(running()).toBe(0);
  await see("visible");
  expect(given).toHaveLength(2);
});

test("a picture that does not begin, or a part that is missing, leaves no camera on", async () => {
  const { outcome } = open(() => Promise.reject(new DOMException("", "AbortError")));
  answer("granted");
  expect(await outcome).toBe("part-missing");
  expect(running()).toBe(0);
});

test.each([
  ["NotAllowedError", "refused"],
  ["NotFoundError", "absent"],
])("%s is said to be %s", async (name, told) => {
  const { outcome } = open();
  answer(new DOMException("", name));
  expect(await outcome).toBe(told);
});
