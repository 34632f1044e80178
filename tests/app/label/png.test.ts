import { expect, test } from "vitest";
import { withSize } from "../../../app/label/png.ts";

// A picture as small as it gets: signature, head, no data, end. Its sums are not looked at here.
const SIGNATURE = [137, 80, 78, 71, 13, 10, 26, 10];
const HEAD = [0, 0, 0, 13, 73, 72, 68, 82, ...new Array<number>(17).fill(1)];
const END = [0, 0, 0, 0, 73, 69, 78, 68, 0xae, 0x42, 0x60, 0x82];
const png = Uint8Array.from([...SIGNATURE, ...HEAD, ...END]);

test("300 dots an inch are 11811 a metre, said right after the head", () => {
  // The sum is the one that any other writer's 300-dot pictures carry (from memory).
  const chunk = [0, 0, 0, 9, 112, 72, 89, 115, 0, 0, 0x2e, 0x23, 0, 0, 0x2e, 0x23, 1];
  const sum = [0x78, 0xa5, 0x3f, 0x76];
  expect([...withSize(png, 300)]).toEqual([...SIGNATURE, ...HEAD, ...chunk, ...sum, ...END]);
});
