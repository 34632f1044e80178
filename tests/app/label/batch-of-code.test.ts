import { expect, test } from "vitest";
import { batchOfCode } from "../../../app/label/batch-of-code.ts";

const records = [
  { runId: "old", batch: "PB-2511", startedAt: 1 },
  { runId: "young", batch: "pb-2511 ", startedAt: 3 },
  { runId: "other", batch: "HS-2511", startedAt: 2 },
  { runId: "nameless", batch: " ", startedAt: 4 },
];

test.each([
  ["HS-2511", "other"],
  [" hs-2511", "other"],
  ["PB-2511", "young"],
  ["PB-2512", undefined],
  ["2P/0123ABCD/1/1/AB", undefined],
  ["", undefined],
])("a label that says %j is that of %s", (text, runId) => {
  expect(batchOfCode(text, records)).toBe(runId);
});
