import type { Command } from "../../../core/run/command.ts";
import { tell } from "../../commands.ts";
import { noted } from "../../noted.ts";
import { sayLater } from "../../words/say-later.ts";

/**
 * Carries out an order and offers to take it back.
 *
 * @param done - what was done, said at the foot of the screen
 * @returns why it was refused, as a sentence; nothing when it was stored
 */
export async function act(
  runId: string,
  command: Command,
  done: string,
): Promise<string | undefined> {
  const why = await noted(runId, command, `${done}. ${sayLater.run.saved}`);
  if (why !== undefined) tell(why);
  return why;
}
