import { defineConfig } from "vitest/config";
import { ClosingLine } from "./tests/support/tool/closing-line.ts";

// These look at the built app, or run whole tools.
const SLOW = ["tests/browser/**/*.test.ts", "tests/build/{budget,planted-breaches,policy}.test.ts"];
// These take times or wait for the machine's own clock: one after the other, with nothing beside.
const ALONE = [
  "tests/browser/{alarm-late,asleep,dim,drip,ghosts,logbook,on-time,parts,plan,reach}.test.ts",
  "tests/browser/{notices,speaker,spoken,status-line,update}.test.ts",
];

const browser = {
  globalSetup: "tests/support/tool/build.ts",
  testTimeout: 60_000,
  hookTimeout: 60_000,
};

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
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          ...browser,
          name: "browser",
          include: SLOW,
          exclude: ALONE,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          ...browser,
          name: "alone",
          include: ALONE,
          fileParallelism: false,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
