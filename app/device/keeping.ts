/** How well the browser keeps what is stored, as far as it says. */
export interface Keeping {
  /** Kept even when space runs short; undefined where the browser does not say. */
  readonly persisted?: boolean;
  /** Bytes. */
  readonly used?: number;
  readonly quota?: number;
}

/** An empty answer where a browser lacks or refuses the question. */
async function answer<Value>(ask: () => Promise<Value> | undefined): Promise<Value | undefined> {
  try {
    return await ask();
  } catch {
    return undefined;
  }
}

const storage = (): Partial<StorageManager> | undefined =>
  "storage" in navigator ? navigator.storage : undefined;

/** Whether what is stored is protected, and how much there is of it. */
export async function keepingNow(): Promise<Keeping> {
  const [persisted, estimate] = await Promise.all([
    answer(() => storage()?.persisted?.()),
    answer(() => storage()?.estimate?.()),
  ]);
  return {
    ...(persisted === undefined ? {} : { persisted }),
    ...(estimate?.usage === undefined ? {} : { used: estimate.usage }),
    ...(estimate?.quota === undefined ? {} : { quota: estimate.quota }),
  };
}

/** Asks for protection; call inside a tap. Undefined where the browser cannot be asked. */
export const askToKeep = (): Promise<boolean | undefined> => answer(() => storage()?.persist?.());
