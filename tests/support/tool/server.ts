import { readdirSync, readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { extname, join, relative, sep } from "node:path";
import { gzipSync } from "node:zlib";

const MEDIA_TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".txt": "text/plain; charset=utf-8",
};

export interface AppServer {
  readonly origin: string;
  /** Where the app starts, with a closing slash. */
  readonly url: string;
  /** Deploys another build in place of the present one. */
  readonly deploy: (folder: string) => void;
  readonly stop: () => Promise<void>;
}

/** Read once: a build that runs beside the test does not pull files from under it. */
function filesOf(folder: string): ReadonlyMap<string, Uint8Array> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile());
  if (files.length === 0) throw new RangeError(`expected a build in ${folder}, found no file`);
  return new Map(
    files.map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [relative(folder, path).split(sep).join("/"), readFileSync(path)];
    }),
  );
}

const listening = (server: Server): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      if (address && typeof address === "object") resolve(address.port);
    });
  });

/**
 * A plain static host, as dull as the dullest the app may be put on.
 *
 * @param under - the path the app is served under, to show that it does not need the root
 * @param gzip - whether it sends text compressed, as most hosts do
 */
export async function serveApp({
  folder = "dist",
  under = "/",
  gzip = false,
}: {
  readonly folder?: string;
  readonly under?: string;
  readonly gzip?: boolean;
} = {}): Promise<AppServer> {
  let files = filesOf(folder);
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://host");
    const path = pathname.startsWith(under) ? pathname.slice(under.length) || "index.html" : "";
    const body = files.get(decodeURIComponent(path));
    if (!body) {
      response.writeHead(404, { "Content-Type": "text/plain" }).end("No such file.");
      return;
    }
    const pack = gzip && !path.endsWith(".png");
    response.writeHead(200, {
      "Content-Type": MEDIA_TYPES[extname(path)] ?? "application/octet-stream",
      ...(pack ? { "Content-Encoding": "gzip" } : {}),
      // Many hosts say so unasked; an update must get past it.
      "Cache-Control": "max-age=600",
    });
    response.end(pack ? gzipSync(body) : body);
  });
  const origin = `http://127.0.0.1:${await listening(server)}`;
  return {
    origin,
    url: origin + under,
    deploy: (other) => {
      files = filesOf(other);
    },
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
