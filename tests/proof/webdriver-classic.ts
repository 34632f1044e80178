import { spawn } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod/mini";
import { SIZES } from "../support/phone/browser.ts";
import {
  freePort,
  type Glass,
  keyActions,
  type Pointer,
  pressActions,
  untilDone,
} from "./webdriver.ts";

const answerSchema = z.object({ value: z.unknown() });
const errorSchema = z.object({ error: z.string(), message: z.string() });
const sessionSchema = z.object({
  sessionId: z.string(),
  capabilities: z.object({ browserName: z.string(), browserVersion: z.string() }),
});
const scriptSchema = z.object({ json: z.optional(z.string()), threw: z.optional(z.string()) });

type Send = (method: "GET" | "POST" | "DELETE", path: string, body?: object) => Promise<unknown>;

/** The plain protocol: JSON over HTTP (W3C, WebDriver). */
const senderTo =
  (base: string): Send =>
  async (method, path, body) => {
    const answer = await fetch(base + path, {
      method,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      headers: { "Content-Type": "application/json" },
    });
    const { value } = answerSchema.parse(await answer.json());
    const error = errorSchema.safeParse(value);
    if (!answer.ok || error.success) throw new Error(`${path}: ${JSON.stringify(value)}`);
    return value;
  };

/** Where Debian puts the small browser that WebKitGTK is tested with. */
function miniBrowser(): string {
  const found = readdirSync("/usr/lib").flatMap((triplet) =>
    ["webkit2gtk-4.1", "webkit2gtk-4.0", "webkitgtk-6.0"]
      .map((folder) => join("/usr/lib", triplet, folder, "MiniBrowser"))
      .filter(existsSync),
  );
  const [first] = found;
  if (first === undefined) throw new Error("no MiniBrowser: apt-get install webkit2gtk-driver");
  return first;
}

/** A screen that nobody looks at. */
async function openScreen() {
  const socket = (number: number) => join("/", "tmp", ".X11-unix", `X${number}`);
  let number = 90;
  while (existsSync(socket(number))) number += 1;
  const args = [`:${number}`, "-screen", "0", "1280x1280x24", "-nolisten", "tcp"];
  const screen = spawn("Xvfb", args, { stdio: "ignore" });
  const failed = new Promise<never>((_, reject) => screen.once("error", reject));
  const shown = untilDone(async () => {
    if (!existsSync(socket(number))) throw new Error("Xvfb shows no screen");
  });
  await Promise.race([shown, failed]);
  return { display: `:${number}`, close: () => screen.kill("SIGTERM") };
}

async function runScript(session: Send, expression: string): Promise<string> {
  const script = `const done = arguments[arguments.length - 1];
    (async () => JSON.stringify(await (${expression})) ?? "null")()
      .then((json) => done({ json }), (error) => done({ threw: String(error) }));`;
  const said = scriptSchema.parse(await session("POST", "/execute/async", { script, args: [] }));
  if (said.json === undefined) throw new Error(said.threw ?? "the script said nothing");
  return said.json;
}

/** WebKitGTK by its own driver, on a screen of its own. */
export async function openWebKit(pointer: Pointer): Promise<Glass> {
  const binary = miniBrowser();
  const screen = await openScreen();
  const port = await freePort();
  const env = {
    ...process.env,
    DISPLAY: screen.display,
    GDK_BACKEND: "x11",
    LIBGL_ALWAYS_SOFTWARE: "1",
  };
  const driver = spawn("WebKitWebDriver", ["-p", String(port)], { stdio: "ignore", env });
  const failed = new Promise<never>((_, reject) => driver.once("error", reject));
  const end = () => {
    driver.kill("SIGTERM");
    screen.close();
  };
  try {
    const send = senderTo(`http://127.0.0.1:${port}`);
    await Promise.race([untilDone(() => send("GET", "/status")), failed]);
    const options = { binary, args: ["--automation"] };
    const alwaysMatch = { "webkitgtk:browserOptions": options };
    const made = await send("POST", "/session", { capabilities: { alwaysMatch } });
    const { sessionId, capabilities } = sessionSchema.parse(made);
    const session: Send = (method, path, body) =>
      send(method, `/session/${sessionId}${path}`, body);
    const { width, height } = SIZES.usual;
    await session("POST", "/window/rect", { width, height: height + 100 });
    await session("POST", "/timeouts", { script: 30_000, pageLoad: 30_000 });
    return {
      name: `${capabilities.browserName} ${capabilities.browserVersion}`,
      goTo: async (url) => void (await session("POST", "/url", { url })),
      reload: async () => void (await session("POST", "/refresh", {})),
      evaluate: (expression) => runScript(session, expression),
      press: async (place, lasts) =>
        void (await session("POST", "/actions", { actions: pressActions(pointer, place, lasts) })),
      type: async (text) => void (await session("POST", "/actions", { actions: keyActions(text) })),
      close: async () => {
        await session("DELETE", "").catch(() => undefined);
        end();
      },
    };
  } catch (error) {
    end();
    throw error;
  }
}
