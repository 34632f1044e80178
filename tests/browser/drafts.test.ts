import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { phoneForTests } from "../support/phone/phone-for-tests.ts";
import { said } from "../support/phone/said.ts";

const KEPT = "second-pour-draft-spec";
/** As a version to come may keep it. */
const FOREIGN = { "spec-of-tomorrow": { name: "Later", vessel: { litres: 3 } } };

const phone = phoneForTests({ size: "small" });

const newSpec = () => phone.goTo(routes.spec("new"));
const nameField = () => phone.page.getByLabel(said.spec.name, { exact: true });
const shown = () => nameField().inputValue();
const kept = () => phone.page.evaluate((key) => localStorage.getItem(key), KEPT);

test("a form that was not saved is there again after a reload, and when the app was ended", async () => {
  await newSpec();
  await nameField().fill("Harbour Light");
  await phone.page.reload();
  await expect.poll(shown).toBe("Harbour Light");

  await phone.close();
  await phone.openAgain();
  await newSpec();
  await expect.poll(shown).toBe("Harbour Light");

  // Dropped on purpose, it does not come back.
  const drop = phone.page.getByRole("button", { name: said.spec.forget });
  await phone.hands.hold(drop);
  await expect.poll(shown).toBe("");
  await phone.page.reload();
  await nameField().waitFor();
  expect(await shown()).toBe("");
  expect(await kept()).toBeNull();
});

test("what cannot be read is no draft, and stays where it is", async () => {
  await newSpec();
  await phone.page.evaluate(
    ([key, all]) => localStorage.setItem(key ?? "", all ?? ""),
    [KEPT, JSON.stringify(FOREIGN)],
  );
  await phone.page.reload();
  await nameField().fill("Slack Water");
  await expect.poll(kept).toContain("Slack Water");
  expect(JSON.parse((await kept()) ?? "")).toMatchObject(FOREIGN);

  await phone.page.evaluate((key) => localStorage.setItem(key, "{ not a"), KEPT);
  await phone.page.reload();
  await nameField().waitFor();
  expect(await shown()).toBe("");
});
