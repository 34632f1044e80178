import * as z from "zod/mini";
import { ask } from "./engines-hands.ts";
import type { Glass } from "./webdriver.ts";

/** What an engine can do that the app makes use of, each tried rather than looked up. */
export const ABILITIES = [
  "service worker",
  "strict writes",
  "Web Locks",
  "BroadcastChannel",
  "wake lock",
  "notifications",
  "BarcodeDetector",
  "share text",
  "share files",
  "persist",
  "speech",
  "vibration",
  "badge",
  "sound",
  "clipboard",
  "cascade layers",
] as const;

export type Ability = (typeof ABILITIES)[number];

/**
 * In the page: tries each ability. Whatever asks a person for leave may never answer where nobody
 * sits, so each has two seconds.
 */
async function tryAll(): Promise<Record<Ability, string>> {
  const within = (what: Promise<string>): Promise<string> =>
    Promise.race([
      what.catch((error: unknown) => `refused: ${error instanceof Error ? error.name : error}`),
      new Promise<string>((resolve) => setTimeout(() => resolve("asks, no answer"), 2000)),
    ]);
  const has = (holder: object, name: string) => name in holder;
  const yes = (is: boolean) => (is ? "yes" : "no");
  const strict = () =>
    new Promise<string>((resolve, reject) => {
      const opening = indexedDB.open("engine-probe");
      opening.onupgradeneeded = () => opening.result.createObjectStore("one");
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const tx = opening.result.transaction("one", "readwrite", { durability: "strict" });
        tx.objectStore("one").put(1, 1);
        tx.oncomplete = () => {
          const { durability } = tx;
          opening.result.close();
          indexedDB.deleteDatabase("engine-probe");
          resolve(durability === "strict" ? "yes" : `no: ${durability ?? "not told"}`);
        };
      };
    });
  const lock = async () => navigator.locks.request("engine-probe", (held) => yes(held !== null));
  const channel = () =>
    new Promise<string>((resolve) => {
      const [one, other] = [new BroadcastChannel("probe"), new BroadcastChannel("probe")];
      other.onmessage = ({ data }) => resolve(yes(data === "heard"));
      one.postMessage("heard");
    });
  const wake = async () => {
    const held = await navigator.wakeLock.request("screen");
    await held.release();
    return "yes";
  };
  const codes = async () => {
    const detector: unknown = Reflect.get(globalThis, "BarcodeDetector");
    if (typeof detector !== "function") return "no";
    const formats: unknown = await Reflect.get(detector, "getSupportedFormats").call(detector);
    return yes(Array.isArray(formats) && formats.includes("qr_code"));
  };
  const files = () => {
    const file = new File(["x"], "x.txt", { type: "text/plain" });
    return yes(has(navigator, "canShare") && navigator.canShare({ files: [file] }));
  };
  const sound = async () => {
    const audio = new AudioContext();
    const { state } = audio;
    await audio.close();
    return state === "running" ? "yes" : `yes, ${state} until touched`;
  };
  return {
    "service worker": yes(navigator.serviceWorker?.controller != null),
    "strict writes": await within(strict()),
    "Web Locks": has(navigator, "locks") ? await within(lock()) : "no",
    BroadcastChannel: has(globalThis, "BroadcastChannel") ? await within(channel()) : "no",
    "wake lock": has(navigator, "wakeLock") ? await within(wake()) : "no",
    notifications: has(globalThis, "Notification") ? `yes, ${Notification.permission}` : "no",
    BarcodeDetector: await within(codes()),
    "share text": yes(has(navigator, "share")),
    "share files": files(),
    persist: has(navigator.storage ?? {}, "persist")
      ? await within(navigator.storage.persist().then((kept) => (kept ? "granted" : "not granted")))
      : "no",
    speech: has(globalThis, "speechSynthesis")
      ? `yes, ${speechSynthesis.getVoices().length} voices`
      : "no",
    vibration: yes(has(navigator, "vibrate")),
    badge: yes(has(navigator, "setAppBadge")),
    sound: has(globalThis, "AudioContext") ? await within(sound()) : "no",
    clipboard: yes(has(navigator, "clipboard")),
    "cascade layers": yes(has(globalThis, "CSSLayerBlockRule")),
  };
}

/** What the engine can do, by ability. */
export const abilitiesOf = (glass: Glass): Promise<Record<Ability, string>> =>
  ask(glass, z.record(z.enum(ABILITIES), z.string()), tryAll);
