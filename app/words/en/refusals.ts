import { abv, decimals, mass } from "../format.ts";
import { storageSize } from "../storage-size.ts";

type About = Readonly<Record<string, string | number>>;

/** What a line of a backup calls a record, in words. */
const KINDS: Readonly<Record<string, string>> = {
  event: "log entry",
  spec: "spec",
  ingredient: "ingredient",
  procedure: "procedure",
  planned: "planned batch",
  photo: "photo",
};

/** Why something was refused: what is wrong, and what to do about it. */
export const refusals: Readonly<Record<string, (about: About) => string>> = {
  "amount-empty": () => "Type an amount, such as 45 ml, 1 1/2 oz or 120 g.",
  "amount-without-number": ({ typed }) =>
    `“${typed}” does not start with a number. Type it like 45 ml or ¾ oz.`,
  "amount-without-unit": ({ typed }) => `“${typed}” has no unit. Add ml, oz, g, dash or another.`,
  "amount-unknown-unit": ({ unit }) =>
    `“${unit}” is not a unit known here. Use ml, cl, l, oz, dash, barspoon, tsp, tbsp, cup, g or kg.`,
  "amount-not-positive": () => "The amount must be more than zero.",
  "amount-too-large": () => "That is more than a tonne. Check the number and its unit.",
  "line-without-ingredient": () => "Type what it is after the amount, such as 45 ml lemon juice.",
  "ingredient-impossible": ({ name }) =>
    `${name}: this much alcohol, sugar and acid does not fit into one litre. Check its figures in the cupboard.`,
  "dry-needs-weight": ({ name }) => `${name} is weighed, not poured. Give its amount in g.`,
  "spec-without-lines": () => "This spec has no ingredients yet. Add at least one.",
  "spec-ingredient-missing": () =>
    "An ingredient of this spec is no longer in the cupboard. Choose another for that line.",
  "wash-dairy-missing": () =>
    "The dairy of this wash is no longer in the cupboard. Choose another.",
  "wash-dairy-not-dairy": ({ name }) => `${name} is not dairy. Choose a milk for the wash.`,
  "nothing-to-wash": () =>
    "Everything is held back, so there is nothing to pour into the milk. Lower a held-back share.",
  "botanicals-keep-all": () =>
    "The botanicals soak up everything they lie in. Use less of them, or more liquid.",
  "stock-unused": () => "This spec uses none of that ingredient. Choose another.",
  "vessel-too-small": () =>
    "This vessel is too small for the batch: filters would drink up what it holds. Use a larger one.",
  "size-too-small": () =>
    "This batch is too small: nothing would be left after curd and filters take their part. Make it larger.",
  "spec-holds-nothing": () => "This spec comes to no volume at all. Add an ingredient that pours.",
  "target-above-spirit": ({ nearest }) =>
    `The held-back spirit is too weak to reach that strength. The nearest it comes is just below ${abv(Number(nearest))}.`,
  "target-below-base": ({ nearest }) =>
    `The washed punch is already stronger than that. The nearest is ${abv(Number(nearest))}, with no top-up.`,
  "nothing-held-back": () =>
    "A strength is to be reached, but nothing is held back to reach it with. Hold back a share of the spirit, or top up in proportion.",
  "procedure-without-end": () =>
    "This procedure never comes to its end: some of its steps lead only to each other. Mend it under Procedures, then start.",
  "run-already-started": () => "This batch has already been started. Open it from the Bench.",
  "run-not-started": () =>
    "This batch has not been started on this phone. Start it from its plan, or take it from the other phone in Kit.",
  "run-ended": () => "This batch has ended. Its log stays in the Logbook.",
  "step-not-open": () =>
    "That step is already finished, perhaps in another window. The screen now shows where the batch is.",
  "reading-missing": () => "Measure first: this step needs a figure before it can be finished.",
  "look-missing": () => "Say what you see first: clear, hazy or cloudy.",
  "reading-not-a-number": () => "That figure cannot be measured. Type it again.",
  "reading-above-poured": ({ most }) =>
    `That is more than went into the vessel (about ${Math.round(Number(most))} ml). Check the digits.`,
  "tare-missing": () =>
    "Weigh the empty vessel first: the scale cannot tell it from what is in it.",
  "weight-below-tare": ({ gross, tare }) =>
    `${mass(Number(gross))} is less than the empty vessel (${mass(Number(tare))}). Check the digits, or weigh the vessel again.`,
  "order-does-not-fit": () =>
    "That does not belong to this step. The screen shows where the batch is; do it again there.",
  "no-bottles": () => "Say how many bottles were filled, at least one.",
  "note-empty": () => "The note is empty. Type something first.",
  "taste-empty": () => "Nothing is on the sheet yet. Give at least one score or choose a word.",
  "taster-missing": () => "Say who tasted, by initials.",
  "tag-empty": () => "The tag is empty. Type a word first.",
  "not-bottled": () => "This batch is not bottled yet, so nothing can be poured out of it.",
  "stock-ended": () =>
    "This batch is off the shelf: it is all gone or was discarded. Take that back in its log first.",
  "pour-empty": () => "Say how much was poured: more than nothing.",
  "not-a-picture": () =>
    "This file is not a picture that the phone can open. Choose another; nothing was changed.",
  "undo-later-first": () => "Something was done after that. Take the later step back first.",
  "nothing-to-undo": () => "There is nothing left to take back there. The log shows what counts.",
  "part-missing": () =>
    "A part of the app did not load, so nothing was noted. Close the app fully, open it again and repeat this.",
  "not-saved": ({ why }) => `NOT SAVED: ${why}. Do it again; nothing else was changed.`,
  "no-room": () =>
    "NOT SAVED: the phone has no room left. Delete videos, photos or apps on the phone, then do it again; nothing else was changed.",
  "pen-elsewhere": () =>
    "Not done: another window of the app writes now. Tap \u201cWork in this window\u201d at the foot of the screen, then do it again.",
  "newer-storage": () =>
    "Not done: a newer version of the app has written on this phone, and this one only reads. Close the app fully and open it again.",
  "storage-silent": ({ why }) =>
    `The phone's storage did not answer: ${why}. Close the app fully, open it and try again. Nothing was changed.`,
  "backup-empty": () => "This file is empty. Choose the one the app saved. Nothing was changed.",
  "backup-too-large": ({ most }) =>
    `This file is larger than ${storageSize(Number(most))}, which no backup is. Choose the one the app saved. Nothing was changed.`,
  "backup-too-many-lines": ({ most }) =>
    `This file holds more than ${decimals(Number(most), 0)} lines, which no backup does. Choose the one the app saved. Nothing was changed.`,
  "backup-encoding": () =>
    "This file was saved again in another encoding (UTF-16). Save it as UTF-8, or choose the one the app saved. Nothing was changed.",
  "backup-not-text": () =>
    "This is not a text file, so it is no backup: perhaps a picture. Choose the one the app saved. Nothing was changed.",
  "backup-not-ours": () =>
    "This file is not a Second Pour backup. Choose the one the app saved. Nothing was changed.",
  "backup-newer": ({ version }) =>
    `This backup was made by a newer version (format ${version}). Update the app, then try again. Nothing was changed.`,
  "backup-unreadable": () =>
    "The phone could not read that file to its end. Copy it onto the phone, then choose it again. Nothing was changed.",
  "backup-given-up": () => "Stopped. Nothing was changed.",
  "backup-added-unread": ({ why }) =>
    `Everything was added, but could not be read again: ${why}. Close the app fully and open it again.`,
  "line-too-long": ({ most }) => `longer than ${storageSize(Number(most))}, which no entry is.`,
  "line-not-utf8": () =>
    "holds letters in another encoding than UTF-8: damaged, or saved again by another program.",
  "line-too-deep": ({ most }) => `brackets nested more than ${most} deep, which no entry has.`,
  "line-not-json": () => "cannot be read: cut off, or altered.",
  "line-no-record": () => "holds no entry.",
  "line-unknown-kind": ({ kind }) =>
    `is of a kind that this version does not know: “${kind}”. A newer one may.`,
  "line-unknown-event": ({ type }) =>
    `is a log entry that this version does not know: “${type}”. A newer one may.`,
  "line-field": ({ kind, field }) =>
    field === ""
      ? `holds no ${KINDS[kind ?? ""] ?? kind}.`
      : `in this ${KINDS[kind ?? ""] ?? kind} “${field}” is not as expected.`,
  "line-differs-here": () =>
    "this entry is here already with other content; what is here stays as it is.",
  "line-differs-above": () =>
    "this entry stands in a line above with other content; that one counts.",
};
