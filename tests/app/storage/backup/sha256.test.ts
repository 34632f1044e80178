import { createHash } from "node:crypto";
import fc from "fast-check";
import { expect, test } from "vitest";
import { Sha256 } from "../../../../app/storage/backup/sha256.ts";

const sumOf = (...parts: readonly Uint8Array[]): string => {
  const sum = new Sha256();
  for (const part of parts) sum.take(part);
  return sum.sum();
};
const bytes = (text: string) => new TextEncoder().encode(text);

// NIST, Secure Hash Standard examples (SHA_All.pdf: one block, two blocks) and the million letters of
// FIPS 180-2, appendix B.3; from memory, and the same by Node's own digest below.
test.each([
  ["", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"],
  ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
  [
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  ],
  ["a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"],
])("the published sum of %.20s", (text, sum) => {
  expect(sumOf(bytes(text))).toBe(sum);
});

test("however the bytes are parted, the sum is the one that Node's digest gives", () => {
  const parts = fc.array(fc.uint8Array({ maxLength: 200 }), { maxLength: 6 });
  fc.assert(
    fc.property(parts, (some) => {
      const whole = createHash("sha256");
      for (const part of some) whole.update(part);
      expect(sumOf(...some)).toBe(whole.digest("hex"));
    }),
    { seed: 2511, numRuns: 500 },
  );
});

test("bytes that lie inside a larger buffer are read where they lie", () => {
  const whole = bytes("----abc----");
  expect(sumOf(whole.subarray(4, 7))).toBe(sumOf(bytes("abc")));
});
