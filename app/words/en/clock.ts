/** What is said about the phone's clock. */
export const clock = {
  moved: (by: string) => `The phone's clock moved by ${by}.`,
  behind: (by: string) =>
    `The phone's clock went back: it is ${by} behind what is written here last.`,
  ask: "Was time really lost, or did only the clock change?",
  keep: "Only the clock changed",
  keepMeans: (due: string) => `The waits stay as long as they were: next due ${due}`,
  trust: "The new time is right",
  trustMeans: (due: string) => `The due times stay as they are: next due ${due}`,
  noWait: "Nothing is waited for; the log notes it",
  late: (due: string, length: string) => `${due}, ${length} late`,
  zone: (zone: string) =>
    `The phone now keeps the time of ${zone}. Times here are shown in it; every wait is as long as before.`,
  slept: (length: string) => `The phone was asleep ${length}: nothing could ring here.`,
};
