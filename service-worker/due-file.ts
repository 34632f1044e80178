import { CALENDAR_TYPE, DUE_FILES } from "../core/board/calendar/due-file.ts";

/** The worker does not know which language the house has chosen: whoever reads it finds their own. */
const GONE = `This file is no longer kept. Take it anew from the batch.
Este archivo ya no se guarda. Tómalo otra vez desde el lote.
Ce fichier n’est plus gardé. Le reprendre depuis le lot.
`;

/** A calendar file that the page left here, sent as what it is. */
export async function dueFile(address: URL): Promise<Response> {
  const files = await caches.open(DUE_FILES);
  const kept = await files.match(address.href, { ignoreSearch: true });
  if (kept === undefined) {
    const headers = { "Content-Type": "text/plain; charset=utf-8" };
    return new Response(GONE, {
      status: 404,
      headers,
    });
  }
  const name = address.pathname.split("/").at(-1) ?? "due.ics";
  return new Response(await kept.text(), {
    headers: {
      "Content-Type": CALENDAR_TYPE,
      "Content-Disposition": `inline; filename="${name.replace(/[^\w.-]/g, "-")}"`,
      "X-Content-Type-Options": "nosniff",
      "Cache-Control": "no-store",
    },
  });
}
