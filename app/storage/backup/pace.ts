/** What long work is handed: when to let the page have a turn, when to stop, whom to tell. */
export interface Work {
  /** Monotonic ms. */
  readonly mono: () => number;
  /** Aborted when somebody gives it up. */
  readonly signal: AbortSignal;
  /** Hears how much of how much is done, in whatever the work counts. */
  readonly onPart: (done: number, all: number) => void;
}

/** The page gets a turn after so many ms: at 60 pictures a second one takes 16. */
const SLICE = 8;

/** Everything that waits for the page gets a turn; unlike a timer not slowed down where it is hidden. */
function turn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}

/** Keeps long work from freezing the page. */
export class Pace {
  readonly #work: Work;
  #since: number;

  constructor(work: Work) {
    this.#work = work;
    this.#since = work.mono();
  }

  /** Whether the page has waited long enough. */
  get isDue(): boolean {
    return this.#work.mono() - this.#since >= SLICE;
  }

  /**
   * Tells how far the work is and lets the page have a turn.
   *
   * @throws DOMException `AbortError` where the work was given up meanwhile
   */
  async rest(done: number, all: number): Promise<void> {
    this.#work.onPart(done, all);
    await turn();
    this.#work.signal.throwIfAborted();
    this.#since = this.#work.mono();
  }
}
