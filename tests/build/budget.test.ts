import { expect, test } from "vitest";
import { distSizes, initialScripts, storedFiles } from "../support/tool/dist-sizes.ts";

const sizes = distSizes();
const sum = (paths: readonly string[], of: "gzip" | "brotli") =>
  paths.reduce((total, wanted) => {
    const file = sizes.find(({ path }) => path === wanted);
    if (!file) throw new RangeError(`expected dist to hold ${wanted}`);
    return total + file[of];
  }, 0);

// Raising a figure is a reviewed line with a reason. 1 kB is 1000 bytes.
test("the first scripts weigh at most 45 kB (gzip)", () => {
  const scripts = initialScripts();
  expect(scripts.length).toBeGreaterThan(0);
  expect(sum(scripts, "gzip")).toBeLessThanOrEqual(45_000);
});

// Three languages, of which a phone speaks one, are 90 of it: without them it could not be changed
// where there is no signal.
test("all that is stored on the phone weighs at most 500 kB (gzip)", () => {
  expect(sum(storedFiles(), "gzip")).toBeLessThanOrEqual(500_000);
});

test("the worker weighs at most 10 kB (brotli)", () => {
  expect(sum(["service-worker.js"], "brotli")).toBeLessThanOrEqual(10_000);
});

test("everything is stored once, but for the worker itself and the crawlers' file", () => {
  const built = sizes.map(({ path }) => path).sort();
  const kept = [...storedFiles(), "robots.txt", "service-worker.js"].sort();
  expect(kept).toEqual(built);
});
