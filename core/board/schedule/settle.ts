import { type Network, startIn, type Task } from "./network.ts";

interface Pulling {
  readonly starts: Float64Array;
  readonly queue: Task[];
  /** By task: whether it is in the queue, and how often it has been. */
  readonly waits: Uint8Array;
  readonly turns: Uint16Array;
}

/** Lowers what a task bounds, and has it looked at. */
function pull({ starts, queue, waits }: Pulling, task: Task): void {
  const start = startIn(starts, task);
  for (const { to, plus } of task.bounds) {
    if (start + plus >= startIn(starts, to)) continue;
    starts[to.index] = start + plus;
    if (waits[to.index] === 0) queue.push(to);
    waits[to.index] = 1;
  }
}

/**
 * Pulls starts back until every bound between steps holds. What is left is the latest start of each
 * step at once: bounds of this kind always have one.
 *
 * @param starts - upper bounds, epoch ms; lowered in place
 * @param from - the tasks whose start was lowered
 * @returns whether none had to begin before it can
 * @source longest paths by label correcting: R. E. Bellman, On a routing problem, Quarterly of
 *   Applied Mathematics 16 (1958); from memory
 */
export function settle(
  tasks: readonly Task[],
  starts: Float64Array,
  from: readonly Task[],
): boolean {
  const [waits, turns] = [new Uint8Array(tasks.length), new Uint16Array(tasks.length)];
  const pulling: Pulling = { starts, queue: [...from], waits, turns };
  for (const task of pulling.queue) {
    const turn = (turns[task.index] ?? 0) + 1;
    // Lowered more often than there are tasks: they chase each other and would never end.
    if (startIn(starts, task) < task.low || turn > tasks.length) return false;
    turns[task.index] = turn;
    waits[task.index] = 0;
    pull(pulling, task);
  }
  return true;
}

/**
 * The latest starts when nothing is ever short.
 *
 * @returns by task, epoch ms; nothing where the time alone does not reach
 */
export function latestUnlimited({ tasks }: Network): Float64Array | undefined {
  const starts = Float64Array.from(tasks, (task) => task.top);
  return settle(tasks, starts, tasks) ? starts : undefined;
}
