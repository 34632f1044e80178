import axe from "axe-core";
import { expect, test } from "vitest";
import { PartsForTests, seconds } from "../support/phone/parts-for-tests.ts";

const parts = new PartsForTests();

test("a hold fills and acts once, while the finger still lies there", async () => {
  const pour = await parts.middleOf("Pour");
  await parts.touch("touchStart", [pour], seconds());
  await parts.page.waitForSelector('.hold-button[data-pressing="true"]');
  await parts.untilDone("pour");
  await parts.touch("touchEnd", [], seconds());
  expect(await parts.done()).toEqual(["pour"]);
});

test("let go too early, it says to keep holding and does nothing", async () => {
  await parts.press(await parts.middleOf("Pour"), 0.4);
  expect(await parts.done()).toEqual(["let-go"]);
  expect(await parts.hintOf("Pour")).toBe("Keep holding");
});

test("a second finger anywhere ends a hold and says to wipe the screen", async () => {
  const pour = await parts.middleOf("Pour");
  await parts.touch("touchStart", [pour], seconds());
  await parts.page.waitForSelector('.hold-button[data-pressing="true"]');
  await parts.touch("touchStart", [pour, { x: 5, y: 5 }], seconds());
  await parts.page.waitForSelector('.hold-button[data-pressing="false"]');
  await parts.touch("touchEnd", [], seconds() + 2);
  expect(await parts.done()).toEqual(["another-contact"]);
  expect(await parts.hintOf("Pour")).toBe("Wipe the screen");
});

test("a hold begun while a drop rests elsewhere does not begin", async () => {
  const pour = await parts.middleOf("Pour");
  const drop = { x: 5, y: 5 };
  await parts.touch("touchStart", [drop], seconds());
  await parts.touch("touchStart", [drop, pour], seconds());
  await parts.touch("touchEnd", [], seconds() + 2);
  expect(await parts.done()).toEqual(["another-contact"]);
});

test("a hold begun for one action never completes another", async () => {
  await parts.touch("touchStart", [await parts.middleOf("Pour")], seconds());
  await parts.page.waitForSelector('.hold-button[data-pressing="true"]');
  await parts.page.evaluate(() => Reflect.get(globalThis, "moveOn")("Bottle"));
  await parts.named("Bottle").waitFor();
  await parts.touch("touchEnd", [], seconds() + 2);
  expect(await parts.done()).toEqual(["lost"]);
});

test("moving off, or a palm, ends a hold", async () => {
  const pour = await parts.middleOf("Pour");
  await parts.touch("touchStart", [pour], seconds());
  await parts.touch("touchMove", [{ x: pour.x, y: pour.y + 200 }], seconds());
  await parts.touch("touchEnd", [], seconds() + 2);
  await parts.touch("touchStart", [{ ...pour, radiusX: 60 }], seconds());
  await parts.touch("touchEnd", [], seconds() + 2);
  expect(await parts.done()).toEqual(["moved-off", "wide"]);
});

test("eighty drops on two controls do nothing", async () => {
  const places = [await parts.middleOf("Pour"), await parts.middleOf("Note")];
  const from = seconds();
  for (let i = 0; i < 80; i++) {
    const place = places[i % 2];
    if (place) await parts.press(place, (i % 6) / 100, from + i / 10);
  }
  expect(new Set(await parts.done())).toEqual(new Set(["too-short"]));
});

test("a tap acts; one within 350 ms of it, anywhere, does not; a later one does", async () => {
  const [note, why] = [await parts.middleOf("Note"), await parts.middleOf("Why?")];
  const from = seconds();
  await parts.press(note, 0.1, from);
  await parts.press(why, 0.1, from + 0.3);
  await parts.press(why, 0.1, from + 0.5);
  expect(await parts.done()).toEqual(["note", "why"]);
});

test("a mouse may click as fast as it likes, and a quick click does not hold", async () => {
  await parts.named("Note").click();
  await parts.named("Pour").click();
  expect(await parts.done()).not.toContain("pour");
  expect((await parts.done())[0]).toBe("note");
});

for (const key of ["Enter", "Space"]) {
  test(`${key} on the focused control acts at once, and once however long it is kept down`, async () => {
    await parts.named("Pour").focus();
    await parts.page.keyboard.down(key);
    for (let i = 0; i < 20; i++) await parts.page.keyboard.down(key);
    await parts.page.keyboard.up(key);
    expect(await parts.done()).toEqual(["pour"]);
  });
}

test("what a hold shows is its name, in the same order (WCAG 2.2, 2.5.3)", async () => {
  expect(await parts.page.getByRole("button", { name: "Pour Hold", exact: true }).count()).toBe(1);
  await parts.press(await parts.middleOf("Pour"), 0.3);
  expect(
    await parts.page.getByRole("button", { name: "Pour Keep holding", exact: true }).count(),
  ).toBe(1);
});

test("a hold that begins within 16 px of the screen's edge never begins, a tap may", async () => {
  await parts.page.addStyleTag({ content: "main { padding: 0 !important }" });
  const pour = await parts.named("Pour").boundingBox();
  const note = await parts.named("Note").boundingBox();
  if (!pour || !note) throw new RangeError("expected both on the page");
  const from = seconds();
  await parts.press({ x: 15, y: pour.y + 40 }, 0.7, from);
  await parts.press({ x: 344.5, y: pour.y + 40 }, 0.7, from + 2);
  expect(await parts.done()).toEqual(["edge", "edge"]);
  await parts.press({ x: 16, y: pour.y + 40 }, 0.7, from + 4);
  await parts.press({ x: 8, y: note.y + 30 }, 0.1, from + 6);
  expect(await parts.done()).toEqual(["edge", "edge", "pour", "note"]);
});

test("while hands are wet a hold takes 900 ms, by touch and by its fill", async () => {
  await parts.page.evaluate(() => document.documentElement.setAttribute("data-wet", ""));
  const from = seconds();
  await parts.press(await parts.middleOf("Pour"), 0.89, from);
  expect(await parts.done()).toEqual(["let-go"]);
  await parts.press(await parts.middleOf("Pour"), 0.91, from + 2);
  expect(await parts.done()).toEqual(["let-go", "pour"]);
  await parts.touch("touchStart", [await parts.middleOf("Drop it")], seconds() + 4);
  const fill = parts.page.locator('.hold-button[data-pressing="true"] .hold-button-fill');
  expect(await fill.evaluate((one) => getComputedStyle(one).animationDuration)).toBe("0.9s");
  await parts.touch("touchEnd", [], seconds() + 4.1);
  await parts.page.evaluate(() => document.documentElement.removeAttribute("data-wet"));
});

test("a touch reader's click acts at once", async () => {
  await parts.named("Pour").evaluate((button: HTMLButtonElement) => button.click());
  expect(await parts.done()).toEqual(["pour"]);
});

test("a control that is not ready says so and hears nothing", async () => {
  const later = parts.named("Not yet");
  expect(await later.getAttribute("aria-disabled")).toBe("true");
  await later.focus();
  await parts.page.keyboard.press("Enter");
  await later.evaluate((button: HTMLButtonElement) => button.click());
  await parts.press(await parts.middleOf("Not yet"), 1);
  expect(await parts.done()).toEqual([]);
});

test("the pad takes figures by touch and by keyboard, and saves by a hold", async () => {
  let at = seconds();
  expect(await parts.named("Save").getAttribute("aria-disabled")).toBe("true");
  for (const key of ["1", "2", "point", "5"]) {
    at += 0.2;
    await parts.press(await parts.middleOf(key), 0.07, at);
  }
  await parts.page.getByRole("textbox").focus();
  await parts.page.keyboard.press("0");
  await parts.page.keyboard.press("7");
  await parts.page.keyboard.press("Backspace");
  expect(await parts.page.getByRole("textbox").inputValue()).toBe("12.50");
  expect(await parts.page.getByRole("textbox").getAttribute("inputmode")).toBe("none");
  await parts.touch("touchStart", [await parts.middleOf("Save")], at + 1);
  await parts.touch("touchEnd", [], at + 1.7);
  expect(await parts.done()).toEqual(["save 12.50"]);
});

test("the stepper steps, and stops where it must", async () => {
  const value = parts.page.locator(".stepper-value");
  await parts.named("More").click();
  expect(await value.textContent()).toBe("5 L");
  const from = seconds() + 1;
  for (let i = 0; i < 4; i++) {
    await parts.press(await parts.middleOf("Less"), 0.1, from + i);
  }
  expect(await value.textContent()).toBe("3 L");
});

test("chips are one radio group: arrows move the choice, Tab enters at it", async () => {
  const chosen = () => parts.page.locator('[role="radio"][aria-checked="true"]').textContent();
  await parts.page.getByRole("radio", { name: "cloudy" }).focus();
  await parts.page.keyboard.press("ArrowRight");
  expect(await chosen()).toBe("hazy");
  await parts.page.keyboard.press("ArrowLeft");
  await parts.page.keyboard.press("ArrowLeft");
  expect(await chosen()).toBe("clear");
  expect(await parts.page.locator('[role="radio"][tabindex="0"]').allTextContents()).toEqual([
    "clear",
  ]);
});

test("every control is large enough and far enough from its neighbours", async () => {
  const boxes = await parts.page.locator("button").evaluateAll((buttons) =>
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
    await parts.page.emulateMedia({ colorScheme });
    await parts.page.addScriptTag({ content: axe.source });
    const found = await parts.page.evaluate(async () => {
      const run = Reflect.get(globalThis, "axe").run;
      const { violations } = await run(document, {
        runOnly: ["wcag2a", "wcag2aa", "wcag2aaa", "wcag22aa", "best-practice"],
      });
      return violations.map((one: { id: string; nodes: { html: string }[] }) =>
        [one.id, ...one.nodes.map((node) => node.html)].join("\n"),
      );
    });
    expect(found).toEqual([]);
    expect(await parts.page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  });
}

test("with less motion asked for, a hold still fills, in steps, and acts", async () => {
  await parts.page.emulateMedia({ reducedMotion: "reduce" });
  await parts.touch("touchStart", [await parts.middleOf("Pour")], seconds());
  const fill = parts.page.locator('.hold-button[data-pressing="true"] .hold-button-fill');
  const timing = await fill.evaluate((one) => getComputedStyle(one).animationTimingFunction);
  expect(timing).toMatch(/^steps\(3/);
  await parts.untilDone("pour");
  await parts.touch("touchEnd", [], seconds());
  await parts.page.emulateMedia({ reducedMotion: null });
});
