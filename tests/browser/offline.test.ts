import { expect, onTestFinished, test } from "vitest";
import { dropProfile, newProfile, openPhone, untilStored } from "../support/phone/browser.ts";
import { serveApp } from "../support/tool/server.ts";

for (const under of ["/", "/bar/second-pour/"]) {
  test(`served at ${under}, it starts from the second visit on with no network at all`, async () => {
    const server = await serveApp({ under });
    const phone = await openPhone({ origin: server.origin });
    try {
      await phone.page.goto(server.url);
      await untilStored(phone.page);
      const version = await phone.page.evaluate(() => document.documentElement.dataset.version);
      await server.stop();
      await phone.context.setOffline(true);

      const later = await phone.context.newPage();
      for (const route of ["", "#/shelf", "?from=home#/bench", "index.html"]) {
        await later.goto("about:blank");
        await later.goto(server.url + route);
        await later.waitForSelector("#app > *");
        const html = later.locator("html");
        expect(await html.getAttribute("data-version")).toBe(version);
      }
      expect(await later.evaluate(() => document.styleSheets.length)).toBe(
        await phone.page.evaluate(() => document.styleSheets.length),
      );
      expect(phone.complaints).toEqual([]);
    } finally {
      await phone.close();
      await server.stop();
    }
  });
}

test("killed outright after the first visit, the phone starts cold with no network", async () => {
  const server = await serveApp();
  const profile = newProfile();
  onTestFinished(() => dropProfile(profile));
  const before = await openPhone({ origin: server.origin, profile });
  await before.page.goto(server.url);
  await untilStored(before.page);
  await before.kill();
  await server.stop();

  const after = await openPhone({ origin: server.origin, profile });
  onTestFinished(after.close);
  await after.context.setOffline(true);
  await after.page.goto(server.url);
  await after.page.waitForSelector("#app > *");
  expect(after.complaints).toEqual([]);
});

test("the home screen gets a name, a start and every icon it asks for", async () => {
  const server = await serveApp({ under: "/bar/" });
  const phone = await openPhone({ origin: server.origin });
  try {
    await phone.page.goto(server.url);
    const session = await phone.context.newCDPSession(phone.page);
    const { errors, data, url } = await session.send("Page.getAppManifest");
    const problems = await session.send("Page.getInstallabilityErrors");
    const manifest = JSON.parse(data ?? "{}");
    expect(errors).toEqual([]);
    expect(problems.installabilityErrors).toEqual([]);
    expect(new URL(manifest.start_url, url).href).toBe(server.url);
    for (const { src, sizes } of manifest.icons) {
      const drawn = await phone.page.evaluate(async (address) => {
        const image = new Image();
        image.src = address;
        await image.decode();
        return `${image.naturalWidth}x${image.naturalHeight}`;
      }, new URL(src, url).href);
      if (sizes !== "any") expect(drawn).toBe(sizes);
    }
  } finally {
    await phone.close();
    await server.stop();
  }
});
