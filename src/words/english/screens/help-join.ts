/** The help of joining a walk. */
export const helpOfJoinWords = {
  "guide/join": "Help: joining a walk",
  "guide/join-code":
    "The lead makes a code under “More”, “Link and followers”. It has nine letters and digits, counts for 15 minutes, and lets in with one role.",
  "guide/join-roles":
    "A lead also closes the walk and lets others in, a marker marks steps, records and notes, a watcher reads only.",
  "guide/join-owner": "The owner’s code of the hub leads any of its walks: choose one from the list.",
  "guide/join-kept":
    "A walk that was joined is kept on this device as well, and goes on here when the link is lost.",
  "guide/join-expired":
    "A code that has expired or was mistyped lets nobody in: ask the lead for another one.",
  "guide/join-unreachable":
    "If the hub does not answer, see that this device is on its network and that the address is the hub’s own.",
} as const;
