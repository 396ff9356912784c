/** The help of joining a walk. */
export const helpOfJoinWords = {
  "guide/join": "Help: joining a walk",
  "guide/join-code":
    "The lead makes a code under “More”, “Link and followers”. It has nine letters and digits, counts for 15 minutes, and lets in as many tablets as the lead said, one unless more, with one role.",
  "guide/join-roles":
    "A lead also closes the walk and lets others in, a marker marks steps, records and notes, a watcher reads only.",
  "guide/join-owner": "The owner’s code of the hub leads any of its walks: choose one from the list.",
  "guide/join-kept":
    "A walk that was joined is kept on this device as well, and goes on here when the link is lost.",
  "guide/join-expired":
    "A code that has expired, was mistyped or has let in as many tablets as it may lets nobody in: ask the lead for another one. After several wrong codes the hub has all on this network wait for some seconds.",
  "guide/join-key":
    "Each tablet keeps a key that nobody can copy, and shows the hub that it has it: nobody else can take its place in the walk. Without TLS, and in old browsers, there is none, and the screen “Link and followers” says so.",
  "guide/join-unreachable":
    "If the hub does not answer, see that this device is on its network and that the address is the hub’s own.",
} as const;
