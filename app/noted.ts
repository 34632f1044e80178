import type { Command } from "../core/run/command.ts";
import { perform, tell } from "./commands.ts";
import { sentence } from "./words/say-later.ts";

/**
 * Carries out an order about a batch and offers to take it back.
 *
 * @param done - what was done, said at the foot of the screen
 * @returns why it was refused, as a sentence; nothing when it was stored
 */
export async function noted(
  runId: string,
  command: Command,
  done: string,
): Promise<string | undefined> {
  const stored = await perform(runId, command);
  if (!stored.ok) return sentence(stored);
  tell(done, { runId, act: stored.value });
  return undefined;
}
