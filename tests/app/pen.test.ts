import { afterEach, beforeEach, expect, test, vi } from "vitest";

/** More than any window should ask; a loop ends here instead of hanging the test. */
const ENDLESS = 20;

type Answer = "granted, then refused" | DOMException;

/** The window's locks, which answer every request after the first in the same way. */
function locks(first: Answer, later: Answer) {
  const request = vi.fn(async (_name: string, options: object, call: (lock: object) => unknown) => {
    const asked = request.mock.calls.length;
    if (asked > ENDLESS) return new Promise(() => undefined);
    const answer = asked === 1 ? first : later;
    if (answer !== "granted, then refused") throw answer;
    void call(options);
    throw later;
  });
  vi.stubGlobal("navigator", { locks: { request } });
  return request;
}

const refused = (name: string) => new DOMException("refused", name);

/** All that is asked here is answered in promises: the next task begins when none is left. */
const allAnswered = () => new Promise((resolve) => setTimeout(resolve));

/** What the pen is once all that is asked has been answered. */
async function penOf(): Promise<string> {
  const { askForPen, pen } = await import("../../app/pen.ts");
  await askForPen(async () => undefined);
  await allAnswered();
  return pen.value;
}

beforeEach(() => void vi.resetModules());
afterEach(() => vi.unstubAllGlobals());

test("a window that is forbidden locks asks once, and takes itself to be the only one", async () => {
  const request = locks(refused("SecurityError"), refused("SecurityError"));
  expect(await penOf()).toBe("mine");
  expect(request).toHaveBeenCalledTimes(1);
});

test("a page on its way out does not ask again for what it is refused, and writes no more", async () => {
  // So does WebKitGTK 2.50 while the next page loads, and that page never came.
  const request = locks("granted, then refused", refused("InvalidStateError"));
  expect(await penOf()).toBe("elsewhere");
  expect(request).toHaveBeenCalledTimes(1);
});

test("a window that waits its turn gives up where it is refused for good", async () => {
  const request = locks(refused("AbortError"), refused("InvalidStateError"));
  expect(await penOf()).toBe("elsewhere");
  expect(request).toHaveBeenCalledTimes(2);
});

test("a window that may not take the pen goes on to follow, and may be told to try again", async () => {
  const request = locks(refused("AbortError"), refused("InvalidStateError"));
  expect(await penOf()).toBe("elsewhere");
  const { pen, takePen } = await import("../../app/pen.ts");
  takePen();
  expect(pen.value).toBe("asking");
  await allAnswered();
  expect(pen.value).toBe("elsewhere");
  expect(request).toHaveBeenCalledTimes(3);
});
