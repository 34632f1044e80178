import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";
import { type AppServer, serveApp } from "../tool/server.ts";
import { dropProfile, newProfile, openPhone, type Phone, type PhoneOptions } from "./browser.ts";
import { type Hands, handsOn } from "./hands.ts";

/** A new phone for each test of a file, with its real clock; nothing is on it before `goTo`. */
export interface PhoneForTests extends Pick<Phone, "page" | "close" | "kill"> {
  readonly server: AppServer;
  readonly hands: Hands;
  /** Opens the app at an address anew, as typed into the browser. */
  readonly goTo: (hash: string) => Promise<void>;
  /** Opens the same phone again after `close` or `kill`, with all that it kept. */
  readonly openAgain: () => Promise<void>;
}

/** Serves the app to a file of tests; none may leave its phone with a complaint. */
export function phoneForTests(options: Omit<PhoneOptions, "origin" | "profile">): PhoneForTests {
  let server: AppServer | undefined;
  let profile = "";
  let opened: (Phone & { readonly hands: Hands }) | undefined;
  const complaints: Phone["complaints"][] = [];
  const there = <One>(one: One | undefined): One => {
    if (one === undefined) throw new RangeError("the phone opens with the first test, not before");
    return one;
  };
  const phone = () => there(opened);
  const openAgain = async () => {
    const next = await openPhone({ ...options, origin: there(server).origin, profile });
    complaints.push(next.complaints);
    opened = { ...next, hands: await handsOn(next.page) };
  };
  beforeAll(async () => {
    server = await serveApp();
  });
  afterAll(() => server?.stop());
  beforeEach(async () => {
    profile = newProfile();
    await openAgain();
  });
  afterEach(async () => {
    await phone().close();
    dropProfile(profile);
    expect(complaints.splice(0).flat()).toEqual([]);
  });
  return {
    get server() {
      return there(server);
    },
    get page() {
      return phone().page;
    },
    get hands() {
      return phone().hands;
    },
    close: () => phone().close(),
    kill: () => phone().kill(),
    openAgain,
    goTo: async (hash) => {
      await phone().page.goto(there(server).url + hash);
      await phone().page.locator("main h1").waitFor();
    },
  };
}
