/** The five places, and what the shell says. */
export const places = {
  app: "Second Pour",
  bench: "Bench",
  specs: "Specs",
  shelf: "Shelf",
  logbook: "Logbook",
  kit: "Kit",
  nav: "Places",
  undo: "Take back",
  back: "Back",
  opening: "Opening the phone's storage…",
  failed: (why: string) =>
    `The phone's storage did not open: ${why}. Close the app fully and open it again. Nothing that was saved is lost.`,
  superseded: "a newer version is open in another window",
  slowToOpen: "it takes long. It goes on trying; close other windows of the app, and wait a little",
  loading: "Opening…",
  partMissing:
    "A part of the app did not load. Finish what you are doing, then close the app and open it again.",
  updateOther: "Close the other windows of the app first.",
  updateReopen: "Close the app fully and open it again to start the new version.",
  updateLater:
    "It waits until work in hand is done, forms are saved and no alarm is due within half an hour.",
  notSaved: (why: string) =>
    `NOT SAVED: ${why}. What you did last is not stored. Do it again; if this stays, close the app fully and open it again.`,
  noBeginning: "the batch has no beginning",
  keepsWriting: "another window keeps writing to this batch",
  noRoom:
    "NOT SAVED: the phone has no room left. What you did last is not stored. Delete videos, photos or apps on the phone, then do it again.",
  penElsewhere: "Another window of the app writes now: this one only shows.",
  takePen: "Work in this window",
  newerStorage:
    "A newer version of the app has written on this phone. This one shows what it understands and changes nothing. To get the newer version, close the app fully and open it again.",
  workingOut: (done: number, all: number) => `Reading the logs: ${done} of ${all} batches…`,
  lost: "There is nothing at this address. It may have been removed.",
  updateWaiting: "A new version is ready. It will not start by itself.",
  updateNow: "Restart into it",
  unread: (count: number) =>
    `${count} stored ${count === 1 ? "entry" : "entries"} could not be read by this version. They are kept as they are; updating the app may read them.`,
};
