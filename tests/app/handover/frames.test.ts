import fc from "fast-check";
import encodeQR from "qr";
import { decodeQR } from "qr/decode.js";
import { expect, test } from "vitest";
import {
  framesOf,
  type Gathered,
  gather,
  MOST_FRAMES,
  PART_BYTES,
  wholeOf,
} from "../../../app/handover/frames.ts";
import { nameOf, packed, unpacked } from "../../../app/handover/parcel.ts";

const ID = "0A1B2C3D";
const gatherAll = (frames: readonly string[]): Gathered | undefined =>
  frames.reduce<Gathered | undefined>(gather, undefined);

test("any parcel comes over whole, in any order, with repeats and foreign codes between", () => {
  fc.assert(
    fc.property(
      fc.uint8Array({ minLength: 1, maxLength: 6 * PART_BYTES }),
      fc.infiniteStream(fc.nat()),
      (bytes, chance) => {
        const frames = framesOf(bytes, ID);
        const shown = [...frames, ...frames, "another code", "2P/0A1B2C3D/0/1/AB"]
          .map((frame) => [chance.next().value, frame] as const)
          .sort(([a], [b]) => a - b)
          .map(([, frame]) => frame);
        const got = gatherAll(shown);
        expect(got && wholeOf(got)).toEqual(Uint8Array.from(bytes));
      },
    ),
    { numRuns: 60 },
  );
});

test("one frame short is not whole yet, and says how far it is", () => {
  const frames = framesOf(new Uint8Array(5 * PART_BYTES), ID);
  const got = gatherAll(frames.slice(1));
  expect(got?.parts.size).toBe(4);
  expect(got?.count).toBe(5);
  expect(got && wholeOf(got)).toBeUndefined();
});

test("a frame of another parcel begins anew", () => {
  const [first = ""] = framesOf(new Uint8Array(2 * PART_BYTES), ID);
  const [other = ""] = framesOf(new Uint8Array(3 * PART_BYTES), "FFFFFFFF");
  expect(gather(gather(undefined, first), other)).toMatchObject({ id: "FFFFFFFF", count: 3 });
});

test.each([
  ["too many parts", `2P/${ID}/1/${MOST_FRAMES + 1}/AB0`],
  ["a part beyond the last", `2P/${ID}/3/2/AB0`],
  ["small letters", `2P/${ID}/1/1/ab0`],
  ["no parcel", "2P//1/1/AB0"],
])("%s is no frame", (_, text) => {
  expect(gather(undefined, text)).toBeUndefined();
});

test("a frame fits a code that an independent reader reads off a screen", () => {
  const noise = Uint8Array.from({ length: PART_BYTES }, (_, at) => (at * 197 + 31) % 256);
  const [frame = ""] = framesOf(noise, ID);
  const modules = encodeQR(frame, "raw", { ecc: "medium", border: 4 });
  // Version 15 is 77 modules wide, and a quiet edge of four on each side.
  expect(modules.length).toBeLessThanOrEqual(77 + 8);
  const scale = 4;
  const size = modules.length * scale;
  const data = new Uint8Array(size * size * 4).fill(255);
  for (let y = 0; y < size; y += 1) {
    for (let x = 0; x < size; x += 1) {
      const dark = modules[Math.floor(y / scale)]?.[Math.floor(x / scale)] === true;
      data.fill(dark ? 0 : 255, (y * size + x) * 4, (y * size + x) * 4 + 3);
    }
  }
  expect(decodeQR({ width: size, height: size, data })).toBe(frame);
});

test("a packed text is smaller, unpacks to itself, and a damaged one to nothing", async () => {
  const text = JSON.stringify(Array.from({ length: 200 }, (_, at) => ({ at, what: "reading" })));
  const small = await packed(text);
  expect(small.length).toBeLessThan(text.length / 3);
  expect(await unpacked(small)).toBe(text);
  expect(await unpacked(small.slice(0, 40))).toBeUndefined();
  expect(await unpacked(new Uint8Array([1, 2, 3]))).toBeUndefined();
  expect(await nameOf(small)).toMatch(/^[0-9A-F]{8}$/u);
});

test("a parcel that swells beyond all measure is refused", async () => {
  const bomb = await packed("0".repeat(21_000_000));
  expect(bomb.length).toBeLessThan(100_000);
  expect(await unpacked(bomb)).toBeUndefined();
});
