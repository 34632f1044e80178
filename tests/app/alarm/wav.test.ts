import { expect, test } from "vitest";
import { wavOf } from "../../../app/alarm/wav.ts";

// Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft, 1991); the
// bytes below were written by hand from the field list, from memory.
test("two samples at 8 kHz, byte for byte", () => {
  const text = (letters: string) => [...letters].map((letter) => letter.charCodeAt(0));
  expect([...wavOf(new Float32Array([1, -1]), 8000)]).toEqual([
    ...text("RIFF"),
    ...[40, 0, 0, 0],
    ...text("WAVE"),
    ...text("fmt "),
    ...[16, 0, 0, 0],
    ...[1, 0],
    ...[1, 0],
    ...[0x40, 0x1f, 0, 0],
    ...[0x80, 0x3e, 0, 0],
    ...[2, 0],
    ...[16, 0],
    ...text("data"),
    ...[4, 0, 0, 0],
    ...[0xff, 0x7f, 0x01, 0x80],
  ]);
});

test("samples beyond full scale are clipped, not wrapped", () => {
  const view = new DataView(wavOf(new Float32Array([3, -3, 0.5]), 8000).buffer);
  expect([44, 46, 48].map((at) => view.getInt16(at, true))).toEqual([32767, -32767, 16384]);
});
