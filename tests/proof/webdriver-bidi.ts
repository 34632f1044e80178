import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as z from "zod/mini";
import { SIZES } from "../support/phone/browser.ts";
import { type Glass, keyActions, type Pointer, pressActions, untilDone } from "./webdriver.ts";

const messageSchema = z.object({
  id: z.optional(z.nullable(z.number())),
  type: z.string(),
  result: z.optional(z.unknown()),
  error: z.optional(z.string()),
  message: z.optional(z.string()),
});
const sessionSchema = z.object({
  capabilities: z.object({ browserName: z.string(), browserVersion: z.string() }),
});
const treeSchema = z.object({ contexts: z.array(z.object({ context: z.string() })) });
const scriptSchema = z.object({
  result: z.optional(z.object({ value: z.optional(z.unknown()) })),
  exceptionDetails: z.optional(z.object({ text: z.string() })),
});
const whereSchema = z.object({ ws_host: z.string(), ws_port: z.number() });

type Send = (method: string, params: object) => Promise<unknown>;

/** The two-way protocol: JSON over a web socket (W3C, WebDriver BiDi). */
async function connect(address: string): Promise<{ send: Send; close: () => void }> {
  const socket = new WebSocket(address);
  const waiting = new Map<number, (message: z.infer<typeof messageSchema>) => void>();
  let last = 0;
  socket.addEventListener("message", ({ data }) => {
    const message = messageSchema.parse(JSON.parse(String(data)));
    if (typeof message.id === "number") waiting.get(message.id)?.(message);
  });
  await new Promise<void>((resolve, reject) => {
    socket.addEventListener("open", () => resolve());
    socket.addEventListener("error", () => reject(new Error(`nobody answers at ${address}`)));
  });
  const send: Send = (method, params) =>
    new Promise((resolve, reject) => {
      last += 1;
      waiting.set(last, ({ type, result, error, message }) => {
        if (type === "success") resolve(result);
        else reject(new Error(`${method}: ${error} ${message}`));
      });
      socket.send(JSON.stringify({ id: last, method, params }));
    });
  return { send, close: () => socket.close() };
}

/** A browser that asks nothing, fetches nothing of its own and is on no screen. */
const PREFERENCES = [
  ["app.update.disabledForTesting", true],
  ["browser.shell.checkDefaultBrowser", false],
  ["datareporting.policy.dataSubmissionEnabled", false],
  ["network.captive-portal-service.enabled", false],
  ["network.connectivity-service.enabled", false],
  ["services.settings.server", "data:,"],
  // A phone has a finger; a desktop build listens to one only when told.
  ["dom.w3c_touch_events.enabled", 1],
] as const;

function start() {
  const profile = mkdtempSync(join(tmpdir(), "second-pour-firefox-"));
  const lines = PREFERENCES.map(
    (one) => `user_pref(${one.map((part) => JSON.stringify(part)).join(", ")});`,
  );
  writeFileSync(join(profile, "user.js"), `${lines.join("\n")}\n`);
  const args = ["--headless", "--no-remote", "--profile", profile, "--remote-debugging-port=0"];
  const child = spawn("firefox-esr", [...args, "about:blank"], { stdio: "ignore" });
  const ended = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  const failed = new Promise<never>((_, reject) => child.once("error", reject));
  const where = untilDone(async () => {
    const text = readFileSync(join(profile, "WebDriverBiDiServer.json"), "utf8");
    const { ws_host, ws_port } = whereSchema.parse(JSON.parse(text));
    return `ws://${ws_host}:${ws_port}/session`;
  }, 30_000);
  const end = async () => {
    child.kill("SIGTERM");
    await ended;
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  return { address: Promise.race([where, failed]), end };
}

async function runScript(send: Send, context: string, expression: string): Promise<string> {
  const wrapped = `(async () => JSON.stringify(await (${expression})) ?? "null")()`;
  const answer = await send("script.evaluate", {
    expression: wrapped,
    target: { context },
    awaitPromise: true,
    userActivation: false,
  });
  const { result, exceptionDetails } = scriptSchema.parse(answer);
  if (exceptionDetails) throw new Error(exceptionDetails.text);
  return String(result?.value);
}

/** Firefox by WebDriver BiDi, which it speaks itself: no other program stands between. */
export async function openFirefox(pointer: Pointer): Promise<Glass> {
  const { address, end } = start();
  try {
    const { send, close } = await connect(await address);
    const { capabilities } = sessionSchema.parse(await send("session.new", { capabilities: {} }));
    const [first] = treeSchema.parse(await send("browsingContext.getTree", {})).contexts;
    if (first === undefined) throw new Error("Firefox has no page");
    const { context } = first;
    await send("browsingContext.setViewport", { context, viewport: SIZES.usual });
    const act = (actions: object) => send("input.performActions", { context, actions });
    return {
      name: `${capabilities.browserName} ${capabilities.browserVersion}`,
      goTo: async (url) =>
        void (await send("browsingContext.navigate", { context, url, wait: "complete" })),
      reload: async () =>
        void (await send("browsingContext.reload", { context, wait: "complete" })),
      evaluate: (expression) => runScript(send, context, expression),
      press: async (place, lasts) => void (await act(pressActions(pointer, place, lasts))),
      type: async (text) => void (await act(keyActions(text))),
      close: async () => {
        await send("session.end", {}).catch(() => undefined);
        close();
        await end();
      },
    };
  } catch (error) {
    await end();
    throw error;
  }
}
