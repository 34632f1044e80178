import { afterAll, afterEach, beforeAll, expect } from "vitest";
import { type Bar, openBar, startAfresh } from "./walk-page.ts";

/** A bar that a whole file of tests is at: its page and hands are those of the test that runs now. */
export interface BarForTests extends Bar {
  /** An empty phone and a page of its own for the next test; see `startAfresh`. */
  readonly afresh: (prepare?: () => void) => Promise<Bar>;
}

/**
 * Opens the app before the first test of a file and closes it after the last. After each test the
 * phone must not have complained: no request elsewhere, no breach of the policy, no error thrown.
 *
 * @param options - as `openBar`
 */
export function barForTests(options: Parameters<typeof openBar>[0] = {}): BarForTests {
  let opened: Awaited<ReturnType<typeof openBar>> | undefined;
  const bar = () => {
    if (opened === undefined) throw new RangeError("the bar opens with the first test, not before");
    return opened;
  };
  beforeAll(async () => {
    opened = await openBar(options);
  });
  afterAll(() => opened?.close());
  afterEach(() => expect(bar().phone.complaints).toEqual([]));
  return {
    get server() {
      return bar().server;
    },
    get phone() {
      return bar().phone;
    },
    get page() {
      return bar().page;
    },
    get hands() {
      return bar().hands;
    },
    afresh: async (prepare) => {
      opened = await startAfresh(bar(), prepare);
      return opened;
    },
  };
}
