import { defineConfig } from "vitest/config";
import { ClosingLine } from "./tests/support/closing-line.ts";

// These look at the built app, or run whole tools: one at a time, so that they do not fight for
// the machine.
const SLOW = ["tests/browser/**/*.test.ts", "tests/build/{budget,planted-breaches,policy}.test.ts"];

export default defineConfig({
  define: { __APP_VERSION__: JSON.stringify("0.0.0-test") },
  test: {
    reporters: ["default", new ClosingLine()],
    projects: [
      {
        extends: true,
        test: {
          name: "core",
          css: true,
          include: ["tests/{core,app,build}/**/*.test.{ts,tsx}"],
          exclude: SLOW,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: SLOW,
          globalSetup: "tests/support/build.ts",
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
