import axe from "axe-core";
import type { CDPSession, Page } from "playwright-core";
import { build, type Rolldown } from "vite";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { openPhone, type Phone } from "../support/phone/browser.ts";

/** A page with nothing on it but the parts; what they do is written to `done`. */
const PAGE = `
  import { h, render } from "preact";
  import { useState } from "preact/hooks";
  import "/app/style/tokens.css";
  import "/app/style/base.css";
  import { Chips } from "/app/parts/chips.tsx";
  import { HoldButton } from "/app/parts/hold-button.tsx";
  import { NumberPad } from "/app/parts/number-pad.tsx";
  import { Stepper } from "/app/parts/stepper.tsx";
  import { TapButton } from "/app/parts/tap-button.tsx";

  globalThis.done = [];
  const does = (what) => () => done.push(what);
  const hints = { rest: "Hold", short: "Keep holding", wet: "Wipe the screen" };
  const words = { label: "Collected", unit: "ml", erase: "Erase", mark: "point", done: "Save", hints };
  const Parts = () => {
    const [look, setLook] = useState("cloudy");
    const [typed, setTyped] = useState("");
    const [litres, setLitres] = useState(4);
    const [step, setStep] = useState("Pour");
    globalThis.moveOn = setStep;
    return h("main", { style: "display: grid; gap: 12px; padding: 16px" }, [
      h("h1", {}, "Parts"),
      h(HoldButton, { label: step, hints, onAct: does(step.toLowerCase()), onSpoiled: (why) => done.push(why) }),
      h(HoldButton, { label: "Drop it", hints, tone: "plain", size: "secondary", onAct: does("drop") }),
      h(HoldButton, { label: "Not yet", hints, disabled: true, onAct: does("too early") }),
      h(TapButton, { onAct: does("note") }, "Note"),
      h(TapButton, { size: "least", tone: "quiet", onAct: does("why") }, "Why?"),
      h(Stepper, {
        label: "Vessel",
        shown: litres + " L",
        lessName: "Less",
        moreName: "More",
        atLeast: litres <= 3,
        onLess: () => setLitres(litres - 1),
        onMore: () => setLitres(litres + 1),
      }),
      h(Chips, {
        label: "Look",
        value: look,
        onChange: setLook,
        options: ["cloudy", "hazy", "clear"].map((value) => ({ value, label: value })),
      }),
      h(NumberPad, { value: typed, onChange: setTyped, onDone: () => done.push("save " + typed), words }),
    ]);
  };
  render(h(Parts), document.body);
`;

async function pageOfParts(): Promise<string> {
  const made = await build({
    configFile: false,
    publicDir: false,
    logLevel: "warn",
    define: { "process.env.NODE_ENV": JSON.stringify("production") },
    plugins: [
      {
        name: "page-of-parts",
        resolveId: (id) => {
          if (id === "virtual:parts") return id;
          return id.startsWith("/app/") ? `${process.cwd()}${id}` : null;
        },
        load: (id) => (id === "virtual:parts" ? PAGE : null),
      },
    ],
    build: { write: false, rolldownOptions: { input: "virtual:parts" } },
  });
  const files = [made].flat().flatMap((one) => ("output" in one ? one.output : []));
  const code = files.map((file) => (file.type === "chunk" ? file.code : "")).join("");
  const isCss = (file: Rolldown.OutputAsset | Rolldown.OutputChunk): file is Rolldown.OutputAsset =>
    file.type === "asset" && file.fileName.endsWith(".css");
  const css = files.filter(isCss).map((file) => String(file.source));
  expect(css.join("")).toContain(".hold-button");
  return `<!doctype html><html lang="en"><title>Parts</title>
    <meta name="viewport" content="width=device-width"><style>${css.join("")}</style><body>
    <script type="module">${code.replaceAll("</script", "<\\/script")}</script>`;
}

let html = "";
let phone: Phone;
let page: Page;
let glass: CDPSession;

beforeAll(async () => {
  html = await pageOfParts();
  phone = await openPhone({ origin: "null", size: "small" });
  page = phone.page;
  glass = await phone.context.newCDPSession(page);
});
afterAll(() => phone.close());
beforeEach(async () => {
  await page.setContent(html);
  await page.waitForSelector(".hold-button");
});
afterEach(() => expect(phone.complaints).toEqual([]));

const done = () => page.evaluate<string[]>("globalThis.done");
/** A button by its name, a hold by its first line. */
const named = (name: string) =>
  page
    .getByRole("button", { name, exact: true })
    .or(page.locator(".hold-button").filter({ has: page.getByText(name, { exact: true }) }));
const hintOf = (name: string) => named(name).locator(".hold-button-hint").textContent();

type Point = { readonly x: number; readonly y: number; readonly radiusX?: number };

async function middleOf(name: string): Promise<Point> {
  await named(name).scrollIntoViewIfNeeded();
  const box = await named(name).boundingBox();
  if (!box) throw new RangeError(`expected ${name} on the page`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const seconds = () => Date.now() / 1000;
/** Contacts now on the glass, stamped `at` (epoch s): a stamp makes a contact as short as wanted. */
const touch = (
  type: "touchStart" | "touchMove" | "touchEnd",
  points: readonly Point[],
  at: number,
) =>
  glass.send("Input.dispatchTouchEvent", {
    type,
    touchPoints: points.map((point, id) => ({ ...point, id })),
    timestamp: at,
  });
const press = async (point: Point, lasts: number, from = seconds()) => {
  await touch("touchStart", [point], from);
  await touch("touchEnd", [], from + lasts);
};
const untilDone = (what: string) =>
  page.waitForFunction((wanted) => Reflect.get(globalThis, "done").includes(wanted), what);

test("a hold fills and acts once, while the finger still lies there", async () => {
  const pour = await middleOf("Pour");
  await touch("touchStart", [pour], seconds());
  await page.waitForSelector('.hold-button[data-pressing="true"]');
  await untilDone("pour");
  await touch("touchEnd", [], seconds());
  expect(await done()).toEqual(["pour"]);
});

test("let go too early, it says to keep holding and does nothing", async () => {
  await press(await middleOf("Pour"), 0.4);
  expect(await done()).toEqual(["let-go"]);
  expect(await hintOf("Pour")).toBe("Keep holding");
});

test("a second finger anywhere ends a hold and says to wipe the screen", async () => {
  const pour = await middleOf("Pour");
  await touch("touchStart", [pour], seconds());
  await page.waitForSelector('.hold-button[data-pressing="true"]');
  await touch("touchStart", [pour, { x: 5, y: 5 }], seconds());
  await page.waitForSelector('.hold-button[data-pressing="false"]');
  await touch("touchEnd", [], seconds() + 2);
  expect(await done()).toEqual(["another-contact"]);
  expect(await hintOf("Pour")).toBe("Wipe the screen");
});

test("a hold begun while a drop rests elsewhere does not begin", async () => {
  const pour = await middleOf("Pour");
  const drop = { x: 5, y: 5 };
  await touch("touchStart", [drop], seconds());
  await touch("touchStart", [drop, pour], seconds());
  await touch("touchEnd", [], seconds() + 2);
  expect(await done()).toEqual(["another-contact"]);
});

test("a hold begun for one action never completes another", async () => {
  await touch("touchStart", [await middleOf("Pour")], seconds());
  await page.waitForSelector('.hold-button[data-pressing="true"]');
  await page.evaluate(() => Reflect.get(globalThis, "moveOn")("Bottle"));
  await named("Bottle").waitFor();
  await touch("touchEnd", [], seconds() + 2);
  expect(await done()).toEqual(["lost"]);
});

test("moving off, or a palm, ends a hold", async () => {
  const pour = await middleOf("Pour");
  await touch("touchStart", [pour], seconds());
  await touch("touchMove", [{ x: pour.x, y: pour.y + 200 }], seconds());
  await touch("touchEnd", [], seconds() + 2);
  await touch("touchStart", [{ ...pour, radiusX: 60 }], seconds());
  await touch("touchEnd", [], seconds() + 2);
  expect(await done()).toEqual(["moved-off", "wide"]);
});

test("eighty drops on two controls do nothing", async () => {
  const places = [await middleOf("Pour"), await middleOf("Note")];
  const from = seconds();
  for (let i = 0; i < 80; i++) {
    const place = places[i % 2];
    if (place) await press(place, (i % 6) / 100, from + i / 10);
  }
  expect(new Set(await done())).toEqual(new Set(["too-short"]));
});

test("a tap acts; one within 350 ms of it, anywhere, does not; a later one does", async () => {
  const [note, why] = [await middleOf("Note"), await middleOf("Why?")];
  const from = seconds();
  await press(note, 0.1, from);
  await press(why, 0.1, from + 0.3);
  await press(why, 0.1, from + 0.5);
  expect(await done()).toEqual(["note", "why"]);
});

test("a mouse may click as fast as it likes, and a quick click does not hold", async () => {
  await named("Note").click();
  await named("Pour").click();
  expect(await done()).not.toContain("pour");
  expect((await done())[0]).toBe("note");
});

for (const key of ["Enter", "Space"]) {
  test(`${key} on the focused control acts at once, and once however long it is kept down`, async () => {
    await named("Pour").focus();
    await page.keyboard.down(key);
    for (let i = 0; i < 20; i++) await page.keyboard.down(key);
    await page.keyboard.up(key);
    expect(await done()).toEqual(["pour"]);
  });
}

test("what a hold shows is its name, in the same order (WCAG 2.2, 2.5.3)", async () => {
  expect(await page.getByRole("button", { name: "Pour Hold", exact: true }).count()).toBe(1);
  await press(await middleOf("Pour"), 0.3);
  expect(await page.getByRole("button", { name: "Pour Keep holding", exact: true }).count()).toBe(
    1,
  );
});

test("a hold that begins within 16 px of the screen's edge never begins, a tap may", async () => {
  await page.addStyleTag({ content: "main { padding: 0 !important }" });
  const pour = await named("Pour").boundingBox();
  const note = await named("Note").boundingBox();
  if (!pour || !note) throw new RangeError("expected both on the page");
  const from = seconds();
  await press({ x: 15, y: pour.y + 40 }, 0.7, from);
  await press({ x: 344.5, y: pour.y + 40 }, 0.7, from + 2);
  expect(await done()).toEqual(["edge", "edge"]);
  await press({ x: 16, y: pour.y + 40 }, 0.7, from + 4);
  await press({ x: 8, y: note.y + 30 }, 0.1, from + 6);
  expect(await done()).toEqual(["edge", "edge", "pour", "note"]);
});

test("while hands are wet a hold takes 900 ms, by touch and by its fill", async () => {
  await page.evaluate(() => document.documentElement.setAttribute("data-wet", ""));
  const from = seconds();
  await press(await middleOf("Pour"), 0.89, from);
  expect(await done()).toEqual(["let-go"]);
  await press(await middleOf("Pour"), 0.91, from + 2);
  expect(await done()).toEqual(["let-go", "pour"]);
  await touch("touchStart", [await middleOf("Drop it")], seconds() + 4);
  const fill = page.locator('.hold-button[data-pressing="true"] .hold-button-fill');
  expect(await fill.evaluate((one) => getComputedStyle(one).animationDuration)).toBe("0.9s");
  await touch("touchEnd", [], seconds() + 4.1);
  await page.evaluate(() => document.documentElement.removeAttribute("data-wet"));
});

test("a touch reader's click acts at once", async () => {
  await named("Pour").evaluate((button: HTMLButtonElement) => button.click());
  expect(await done()).toEqual(["pour"]);
});

test("a control that is not ready says so and hears nothing", async () => {
  const later = named("Not yet");
  expect(await later.getAttribute("aria-disabled")).toBe("true");
  await later.focus();
  await page.keyboard.press("Enter");
  await later.evaluate((button: HTMLButtonElement) => button.click());
  await press(await middleOf("Not yet"), 1);
  expect(await done()).toEqual([]);
});

test("the pad takes figures by touch and by keyboard, and saves by a hold", async () => {
  let at = seconds();
  expect(await named("Save").getAttribute("aria-disabled")).toBe("true");
  for (const key of ["1", "2", "point", "5"]) {
    at += 0.2;
    await press(await middleOf(key), 0.07, at);
  }
  await page.getByRole("textbox").focus();
  await page.keyboard.press("0");
  await page.keyboard.press("7");
  await page.keyboard.press("Backspace");
  expect(await page.getByRole("textbox").inputValue()).toBe("12.50");
  expect(await page.getByRole("textbox").getAttribute("inputmode")).toBe("none");
  await touch("touchStart", [await middleOf("Save")], at + 1);
  await touch("touchEnd", [], at + 1.7);
  expect(await done()).toEqual(["save 12.50"]);
});

test("the stepper steps, and stops where it must", async () => {
  const value = page.locator(".stepper-value");
  await named("More").click();
  expect(await value.textContent()).toBe("5 L");
  const from = seconds() + 1;
  for (let i = 0; i < 4; i++) {
    await press(await middleOf("Less"), 0.1, from + i);
  }
  expect(await value.textContent()).toBe("3 L");
});

test("chips are one radio group: arrows move the choice, Tab enters at it", async () => {
  const chosen = () => page.locator('[role="radio"][aria-checked="true"]').textContent();
  await page.getByRole("radio", { name: "cloudy" }).focus();
  await page.keyboard.press("ArrowRight");
  expect(await chosen()).toBe("hazy");
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("ArrowLeft");
  expect(await chosen()).toBe("clear");
  expect(await page.locator('[role="radio"][tabindex="0"]').allTextContents()).toEqual(["clear"]);
});

test("every control is large enough and far enough from its neighbours", async () => {
  const boxes = await page.locator("button").evaluateAll((buttons) =>
    buttons.map((button) => {
      const { x, y, width, height } = button.getBoundingClientRect();
      const wanted = button.dataset.size === "least" ? 48 : 64;
      const least = button.matches(".hold-button:not([data-size='secondary'])") ? 96 : wanted;
      return { name: button.textContent, x, y, width, height, least };
    }),
  );
  expect(boxes.length).toBeGreaterThan(20);
  expect(boxes.filter((box) => Math.min(box.height, box.width) < box.least)).toEqual([]);
  const gap = (a: (typeof boxes)[0], b: (typeof boxes)[0]) =>
    Math.max(
      ...[a.x - b.x - b.width, b.x - a.x - a.width, a.y - b.y - b.height, b.y - a.y - a.height],
    );
  const near = boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b) => (gap(a, b) < 11.99 ? [[a.name, b.name, gap(a, b)]] : [])),
  );
  expect(near).toEqual([]);
});

for (const colorScheme of ["dark", "light"] as const) {
  test(`nothing for axe to find in ${colorScheme}, and nothing wider than the phone`, async () => {
    await page.emulateMedia({ colorScheme });
    await page.addScriptTag({ content: axe.source });
    const found = await page.evaluate(async () => {
      const run = Reflect.get(globalThis, "axe").run;
      const { violations } = await run(document, {
        runOnly: ["wcag2a", "wcag2aa", "wcag2aaa", "wcag22aa", "best-practice"],
      });
      return violations.map((one: { id: string; nodes: { html: string }[] }) =>
        [one.id, ...one.nodes.map((node) => node.html)].join("\n"),
      );
    });
    expect(found).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  });
}

test("with less motion asked for, a hold still fills, in steps, and acts", async () => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await touch("touchStart", [await middleOf("Pour")], seconds());
  const fill = page.locator('.hold-button[data-pressing="true"] .hold-button-fill');
  const timing = await fill.evaluate((one) => getComputedStyle(one).animationTimingFunction);
  expect(timing).toMatch(/^steps\(3/);
  await untilDone("pour");
  await touch("touchEnd", [], seconds());
  await page.emulateMedia({ reducedMotion: null });
});
