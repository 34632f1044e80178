import { createServer } from "node:http";
import type { Place } from "../support/phone/hands.ts";

/** One page of one engine, driven from outside. */
export interface Glass {
  /** The engine and its version, as it says itself. */
  readonly name: string;
  readonly goTo: (url: string) => Promise<void>;
  readonly reload: () => Promise<void>;
  /** Runs an expression in the page, waits for what it promises, and hands it back as JSON. */
  readonly evaluate: (expression: string) => Promise<string>;
  /** Lays a finger, or a mouse where the engine knows no finger, on a place for so long, ms. */
  readonly press: (place: Place, lasts: number) => Promise<void>;
  /** Types on a keyboard. */
  readonly type: (text: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** What touches the glass. */
export type Pointer = "touch" | "mouse";

/**
 * A press as both WebDriver protocols write it (W3C, WebDriver, section 15; the same in WebDriver
 * BiDi, `input.performActions`): time goes by in the browser, not on the wire.
 */
export const pressActions = (pointerType: Pointer, { x, y }: Place, lasts: number) => [
  {
    type: "pointer",
    id: pointerType,
    parameters: { pointerType },
    actions: [
      { type: "pointerMove", x: Math.round(x), y: Math.round(y), duration: 0 },
      { type: "pointerDown", button: 0 },
      { type: "pause", duration: Math.round(lasts) },
      { type: "pointerUp", button: 0 },
    ],
  },
];

/** Keys as both protocols write them. */
export const keyActions = (text: string) => [
  {
    type: "key",
    id: "keyboard",
    actions: [...text].flatMap((value) => [
      { type: "keyDown", value },
      { type: "keyUp", value },
    ]),
  },
];

export const pause = (ms: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, ms));

/**
 * Tries until it goes well.
 *
 * @throws what it threw last, once `ms` are over
 */
export async function untilDone<Value>(attempt: () => Promise<Value>, ms = 20_000): Promise<Value> {
  const until = performance.now() + ms;
  for (;;) {
    try {
      return await attempt();
    } catch (error) {
      if (performance.now() > until) throw error;
      await pause(100);
    }
  }
}

/** A port of this machine that nobody listens on. */
export const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer(() => undefined);
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      const port = address && typeof address === "object" ? address.port : 0;
      server.close(() => resolve(port));
    });
  });
