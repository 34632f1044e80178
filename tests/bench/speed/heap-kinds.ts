import type { CDPSession } from "playwright-core";
import * as z from "zod/mini";

/** What stands in the page's memory, kB. */
export interface HeapKinds {
  /** The browser's own compiled code, which grows for as long as it finds something worth it. */
  readonly code: number;
  /** Everything else: what the page holds on to. */
  readonly held: number;
}

const snapshotSchema = z.object({
  snapshot: z.object({
    meta: z.object({
      node_fields: z.array(z.string()),
      node_types: z.array(z.union([z.string(), z.array(z.string())])),
    }),
  }),
  nodes: z.array(z.number()),
});

async function snapshot(session: CDPSession): Promise<z.infer<typeof snapshotSchema>> {
  const parts: string[] = [];
  const take = ({ chunk }: { readonly chunk: string }) => void parts.push(chunk);
  session.on("HeapProfiler.addHeapSnapshotChunk", take);
  await session.send("HeapProfiler.collectGarbage");
  await session.send("HeapProfiler.takeHeapSnapshot", { reportProgress: false });
  session.off("HeapProfiler.addHeapSnapshotChunk", take);
  return snapshotSchema.parse(JSON.parse(parts.join("")));
}

/** Weighs the page's memory by kind, from a snapshot after garbage collection. */
export async function heapKinds(session: CDPSession): Promise<HeapKinds> {
  const { snapshot: head, nodes } = await snapshot(session);
  const { node_fields: fields, node_types: types } = head.meta;
  const code = [types[0]].flat().indexOf("code");
  const [type, size] = [fields.indexOf("type"), fields.indexOf("self_size")];
  const sums = { code: 0, held: 0 };
  for (let at = 0; at < nodes.length; at += fields.length) {
    const kind = nodes[at + type] === code ? "code" : "held";
    sums[kind] += (nodes[at + size] ?? 0) / 1000;
  }
  return sums;
}
