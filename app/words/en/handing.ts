const frames = (count: number): string => (count === 1 ? "1 code" : `${count} codes`);

/** What is said when something is handed to another phone, or taken from one. */
export const handing = {
  title: "Hand over",
  lost: "There is nothing here to hand over. It may have been removed.",
  what: {
    run: (name: string) => `${name}, with its whole log`,
    spec: (name: string) => `The spec of ${name}, with what it is made of`,
    day: "All batches being made and planned",
  },
  how: "On the other phone open Kit, then “Take from another phone”, and hold its camera over this code. No network is needed.",
  loop: (count: number) => `${frames(count)}, one after another, over and over, in any order.`,
  at: (at: number, count: number) => `${at} of ${count}`,
  pause: "Hold this code still",
  goOn: "Go on",
  packing: "Packing…",
  tooMuch: "That is too much for codes: hand it over as a file.",
  file: "As a file",
  stays:
    "It stays on this phone too. Whoever works on it: say so, so that one phone rings and not both.",
  take: {
    title: "Take from another phone",
    why: "Hold the camera over the code that the other phone shows under “Hand over”. What was done on both phones is kept. Over the code of a label it opens that batch.",
    open: "Open the camera",
    stop: "Stop the camera",
    seen: (seen: number, count: number) => `${seen} of ${frames(count)} read`,
    looking: "Looking for a code…",
    refused:
      "The camera is not allowed here. Allow it for this site in the phone's settings, or let the other phone hand over a file.",
    absent:
      "No camera was found. Let the other phone hand over a file, and bring it in as a backup.",
    damaged: "What was read is damaged. Stop the camera, open it again, and read once more.",
    done: (count: number) => `${count} ${count === 1 ? "entry" : "entries"} taken over.`,
    toBench: "To the Bench",
  },
};
