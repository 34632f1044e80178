import { expect, test } from "vitest";
import { keepAwake } from "../../../app/alarm/keep-awake.ts";

/** A phone whose screen lock is granted or refused as told, and which takes it back on leaving. */
function phone() {
  let visible = true;
  let grants = true;
  let seen = () => {};
  let live: (() => void)[] = [];
  const told = { asked: 0, changes: 0 };
  const takeBack = () => {
    const gone = live;
    live = [];
    for (const run of gone) run();
  };
  return {
    told,
    takeBack,
    host: {
      request: async () => {
        told.asked += 1;
        if (!grants) throw new Error("refused");
        let onRelease = () => {};
        const release = () => {
          live = live.filter((one) => one !== release);
          onRelease();
        };
        live.push(release);
        return {
          release: async () => release(),
          addEventListener: (_: "release", run: () => void) => {
            onRelease = run;
          },
        };
      },
      isVisible: () => visible,
      onVisibility: (run: () => void) => {
        seen = run;
      },
      onChange: () => {
        told.changes += 1;
      },
    },
    held: () => live.length,
    grant: (yes: boolean) => {
      grants = yes;
    },
    leave: () => {
      visible = false;
      takeBack();
      seen();
    },
    comeBack: async () => {
      visible = true;
      seen();
      await Promise.resolve();
      await Promise.resolve();
    },
  };
}

test("held while wanted, let go when not", async () => {
  const { host, held } = phone();
  const awake = keepAwake(host);
  expect(awake.state()).toBe("refused");
  await awake.hold();
  expect([awake.state(), held()]).toEqual(["held", 1]);
  await awake.hold();
  expect(held()).toBe(1);
  await awake.release();
  expect([awake.state(), held()]).toEqual(["refused", 0]);
});

test("lost on leaving, asked for again on return", async () => {
  const one = phone();
  const awake = keepAwake(one.host);
  await awake.hold();
  one.leave();
  expect(awake.state()).toBe("refused");
  await one.comeBack();
  expect([awake.state(), one.held()]).toEqual(["held", 1]);
});

test("not asked for on return when nothing is waited for", async () => {
  const one = phone();
  const awake = keepAwake(one.host);
  await awake.hold();
  await awake.release();
  one.leave();
  await one.comeBack();
  expect([one.told.asked, one.held()]).toEqual([1, 0]);
});

test("a phone low on battery refuses; later it may not", async () => {
  const one = phone();
  one.grant(false);
  const awake = keepAwake(one.host);
  await awake.hold();
  expect(awake.state()).toBe("refused");
  one.grant(true);
  await awake.hold();
  expect(awake.state()).toBe("held");
});

test("taken back while in sight, the state says so at once", async () => {
  const one = phone();
  const awake = keepAwake(one.host);
  await awake.hold();
  const before = one.told.changes;
  one.takeBack();
  expect(awake.state()).toBe("refused");
  expect(one.told.changes).toBe(before + 1);
});

test("wanted no more before the phone answers, it is let go", async () => {
  const one = phone();
  const awake = keepAwake(one.host);
  const asked = awake.hold();
  await awake.release();
  await asked;
  expect([awake.state(), one.held()]).toEqual(["refused", 0]);
});

test("a phone without it says so", async () => {
  const awake = keepAwake({ ...phone().host, request: null });
  await awake.hold();
  expect(awake.state()).toBe("absent");
});
