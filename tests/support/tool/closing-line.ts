import { appendFileSync } from "node:fs";
import type { Reporter, TestModule } from "vitest/node";

/** A file that failed to load has no tests to count: it counts as one failure. */
function countsOf(module: TestModule): { passed: number; failed: number } {
  const states = [...module.children.allTests()].map((test) => test.result().state);
  const passed = states.filter((state) => state === "passed").length;
  const failed = states.filter((state) => state === "failed").length;
  return { passed, failed: failed === 0 && !module.ok() ? 1 : failed };
}

/** Ends every run with `N passed, N failed`, or hands the line to .ci/run, which prints it last. */
export class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const all = modules.map(countsOf);
    const passed = all.reduce((sum, one) => sum + one.passed, 0);
    const failed = all.reduce((sum, one) => sum + one.failed, unhandled.length);
    const line = `${passed} passed, ${failed} failed\n`;
    const file = process.env.CLOSING_LINE_FILE;
    if (file) appendFileSync(file, line);
    else process.stdout.write(`\n${line}`);
  }
}
