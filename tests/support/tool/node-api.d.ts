// The few parts of Node that our tooling uses, written out instead of one more package. A part
// that is missing here is added in its own words; a long list here is the sign to take the package.
declare const process: {
  readonly argv: string[];
  readonly env: Record<string, string | undefined>;
  readonly execPath: string;
  readonly platform: string;
  readonly stdout: { write(text: string): void };
  exitCode?: number;
  getuid?(): number;
  kill(pid: number, signal: string): void;
  cwd(): string;
};

declare module "node:buffer" {
  export const Buffer: { from(text: string): Uint8Array };
}

declare module "node:fs" {
  interface Entry {
    readonly name: string;
    readonly parentPath: string;
    isFile(): boolean;
    isDirectory(): boolean;
  }
  interface Removal {
    readonly force?: boolean;
    readonly recursive?: boolean;
    readonly maxRetries?: number;
    readonly retryDelay?: number;
  }
  export function appendFileSync(path: string, text: string): void;
  export function cpSync(from: string, to: string, options?: { recursive?: boolean }): void;
  export function existsSync(path: string): boolean;
  export function mkdirSync(path: string, options?: { recursive?: boolean }): void;
  export function mkdtempSync(prefix: string): string;
  export function readdirSync(path: string): string[];
  export function readdirSync(
    path: string,
    options: { withFileTypes: true; recursive?: boolean },
  ): Entry[];
  export function readFileSync(path: string): Uint8Array;
  export function readFileSync(path: string, encoding: "utf8"): string;
  export function rmSync(path: string, options?: Removal): void;
  export function statSync(path: string): { isDirectory(): boolean };
  export function symlinkSync(target: string, path: string, kind?: "dir" | "junction"): void;
  export function writeFileSync(path: string, data: string | Uint8Array): void;
}

declare module "node:path" {
  export function basename(path: string, suffix?: string): string;
  export function dirname(path: string): string;
  export function extname(path: string): string;
  export function join(...parts: string[]): string;
  export function relative(from: string, to: string): string;
  export function resolve(...parts: string[]): string;
  export const sep: string;
  export const delimiter: string;
}

declare module "node:os" {
  export function tmpdir(): string;
  /** Over the last 1, 5 and 15 minutes. */
  export function loadavg(): readonly number[];
}

declare module "node:url" {
  export function pathToFileURL(path: string): URL;
}

declare module "node:crypto" {
  interface Hash {
    update(data: string | Uint8Array): Hash;
    digest(encoding: "hex"): string;
  }
  export function createHash(kind: "sha256"): Hash;
}

declare module "node:zlib" {
  export function gzipSync(data: Uint8Array, options?: { level?: number }): Uint8Array;
  export function brotliCompressSync(data: Uint8Array): Uint8Array;
}

declare module "node:child_process" {
  interface Options {
    readonly cwd?: string;
    readonly env?: Record<string, string | undefined>;
    readonly encoding?: "utf8";
    readonly shell?: boolean;
    readonly stdio?: "inherit" | "pipe";
    readonly maxBuffer?: number;
    /** ms */
    readonly timeout?: number;
  }
  interface Outcome {
    readonly status: number | null;
    readonly stdout: string;
    readonly stderr: string;
  }
  interface Child {
    kill(signal: string): boolean;
    once(event: "exit", listener: (code: number | null) => void): void;
    once(event: "error", listener: (error: Error) => void): void;
  }
  export function spawn(
    program: string,
    args: readonly string[],
    options?: {
      readonly stdio?: "ignore";
      readonly env?: Record<string, string | undefined>;
    },
  ): Child;
  export function spawnSync(program: string, args: readonly string[], options?: Options): Outcome;
  export function execFileSync(
    program: string,
    args: readonly string[],
    options?: Options,
  ): Uint8Array;
}

declare module "node:http" {
  interface Incoming {
    readonly url?: string;
  }
  interface Outgoing {
    writeHead(status: number, headers: Readonly<Record<string, string>>): Outgoing;
    end(body?: string | Uint8Array): void;
  }
  export interface Server {
    once(event: "error", listener: (error: Error) => void): void;
    listen(port: number, host: string, ready: () => void): void;
    address(): { readonly port: number } | string | null;
    close(done: () => void): void;
    closeAllConnections(): void;
  }
  export function createServer(listener: (request: Incoming, response: Outgoing) => void): Server;
}
