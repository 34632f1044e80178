/** What is said on a phone on which nothing was made yet, and of the practice. */
export const first = {
  title: "New here?",
  what: "From the spec to the labelled bottle: what to weigh, when to come back, what came through. It rings, it notes, and it works with no signal.",
  practise: "Practise a wash",
  practiseWhy:
    "The whole wash in about a minute, its waits cut to seconds. Have nothing in the vessel. Nothing of it is kept.",
  name: "Practice Wash",
  mark: "Practice: waits last seconds, nothing of it is kept.",
  leave: "Leave the practice",
  over: "That was a whole wash",
  overWhy: "A real one takes a day. It rings at each wait and remembers every figure.",
  done: "Done, remove it",
  gone: "The practice is removed.",
};
