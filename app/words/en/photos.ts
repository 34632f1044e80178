/** What the pictures of a batch say. */
export const photos = {
  title: "Photos",
  none: "No photo yet. One against the light shows next month how clear it was.",
  take: "Take a photo",
  choose: "Choose a photo",
  working: "Making it small enough to keep…",
  added: "Photo kept",
  alt: (number: number, when: string) => `Photo ${number}, ${when}`,
  open: (number: number, when: string) => `Show photo ${number}, ${when}`,
  elsewhere: "on another phone",
  elsewhereLong: "This photo is on the phone that took it, or was removed here.",
  close: "Close the photo",
  remove: "Remove this photo",
  removed: "Photo removed",
  note: "Photos stay on this phone, made smaller and without the place they were taken at.",
  room: (count: number, size: string) =>
    count === 0 ? "none" : `${count === 1 ? "1 photo" : `${count} photos`}, ${size}`,
  roomTitle: "Photos of batches",
};
