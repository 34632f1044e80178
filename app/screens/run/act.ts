import type { Command } from "../../../core/run/command.ts";
import { perform, tell } from "../../commands.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

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
  const result = await perform(runId, command);
  if (!result.ok) {
    const why = sentence(result);
    tell(why);
    return why;
  }
  tell(`${done}. ${sayLater.run.saved}`, { runId, act: result.value });
  return undefined;
}
