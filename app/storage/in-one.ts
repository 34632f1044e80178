/** A transaction, as far as its end matters. */
interface Ending {
  readonly done: Promise<void>;
  readonly abort: () => void;
}

const isBrokenOff = (error: unknown): boolean =>
  error instanceof DOMException && error.name === "AbortError";

/** Takes everything back that the transaction did, unless the phone did so already. */
function abortQuietly(tx: Ending): void {
  try {
    tx.abort();
  } catch {
    // It is over.
  }
}

/**
 * Writes in one transaction: when it resolves, all of it is stored, and nothing where it throws.
 *
 * @param write - waits for nothing but the transaction's own answers: anything else would end it
 * @throws what ended the transaction; its requests often say no more than that they were broken off
 */
export async function inOne<Value>(tx: Ending, write: () => Promise<Value>): Promise<Value> {
  const ended = tx.done.then(
    () => undefined,
    (error: unknown) => error,
  );
  try {
    const value = await write();
    await tx.done;
    return value;
  } catch (error) {
    abortQuietly(tx);
    const cause = await ended;
    throw isBrokenOff(error) && cause !== undefined ? cause : error;
  }
}
