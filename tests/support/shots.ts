// Photographs the built app: npm run shots -- '#/bench' '#/specs'
// One picture a route, phone size and theme, in tests/shots (not committed).
import { mkdirSync } from "node:fs";
import { openPhone, SIZES } from "./browser.ts";
import { setup } from "./build.ts";
import { serveApp } from "./server.ts";

const FOLDER = "tests/shots";
const asked = process.argv.slice(2);
const routes = asked.length > 0 ? asked : ["#/"];
const sizes = ["small", "usual"] as const;
const themes = ["dark", "light"] as const;

setup();
mkdirSync(FOLDER, { recursive: true });
const server = await serveApp();
for (const size of sizes) {
  for (const theme of themes) {
    const phone = await openPhone({ origin: server.origin, size, theme, reducedMotion: true });
    for (const route of routes) {
      await phone.page.goto(server.url + route);
      await phone.page.waitForSelector("#app > *");
      const place = route.replace(/[^a-z0-9]+/gi, "-").replace(/^-|-$/g, "") || "start";
      const path = `${FOLDER}/${place}-${SIZES[size].width}-${theme}.png`;
      await phone.page.screenshot({ path, fullPage: true });
      console.log(path);
    }
    for (const complaint of phone.complaints) console.error(`${size} ${theme}: ${complaint}`);
    await phone.close();
  }
}
await server.stop();
