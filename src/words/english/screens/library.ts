/** The procedures that a hub keeps, and the help of that page. */
export const libraryWords = {
  "library/title": "Hub’s library",
  "library/what": "Procedures that several planners work on",
  "library/alone":
    "This library is on this device alone. Linked with a hub, what others keep comes here, and what is kept here goes there.",
  "library/join": "Link the library",
  "library/join-how":
    "The owner’s code of the hub opens its library, and so does a code that somebody who leads in it makes. It is then kept on this device too, and goes on here when the link is lost.",
  "library/linked": "{$hub}: {$state}, {$role}",
  "library/unsent":
    ".input {$count :integer} .match $count one {{One revision kept here has not been sent yet.}} * {{{$count} revisions kept here have not been sent yet.}}",
  "library/link": "Link and others",
  "library/reading": "The library is being read.",
  "library/not-read": "The library could not be read: {$why}",
  "library/empty": "No procedure is in this library yet.",
  "library/unreadable":
    ".input {$count :integer} .match $count one {{One entry holds no procedure that can be named, and is left alone.}} * {{{$count} entries hold no procedure that can be named, and are left alone.}}",
  "library/apart":
    "{$one :message} and {$other :message} both went on from {$base :message}. Neither has what the other has.",
  "library/apart-no-base":
    "{$one :message} and {$other :message} were not made from one another, nor from one revision here. Neither has what the other has.",
  "library/more-heads":
    ".input {$count :integer} .match $count one {{One more revision stands beside them.}} * {{{$count} more revisions stand beside them.}}",
  "library/bring-together": "Bring them together",
  "library/bring-how":
    "Both are taken to this device and laid side by side, conflict by conflict. What you save of them stands on your shelf: keep it here then, as made from both.",
  "library/name": "revision {$revision} by {$by}",
  "library/name-bare": "the revision by {$by}",
  "library/kept": "Kept {$at :utc form=second} UTC",
  "library/latest": "Nothing was made from it yet",
  "library/on-shelf": "On this device’s shelf",
  "library/take": "Take to this device",
  "library/take-which": "Take {$name :message} to this device",
  "library/refused": "It is no procedure that this program can read: open it in the library of a newer one.",
  "library/keep-title": "Keep a revision in the library",
  "library/keep-which": "Which one on this device’s shelf",
  "library/keep-choice": "{$title}, revision {$revision}",
  "library/keep-choice-bare": "{$title}",
  "library/keep-bases": "What it was made from",
  "library/keep-bases-how":
    "Tick what is in it. What is not ticked and nothing was made from stands beside it, until somebody brings both together.",
  "library/keep-new": "Nothing of this procedure is in the library yet.",
  "library/keep-from-none": "Of none of these",
  "library/keep-who": "Who keeps it",
  "library/keep-why": "Why",
  "library/keep": "Keep it in the library",
  "library/keep-known": "This text is in the library already.",
  "library/keep-say": "Say what it was made from.",
  "library/keep-stale":
    "Something else was made from that already: yours will stand beside it, and somebody has to bring both together.",
  "library/keep-may-not":
    "Only those who lead in this library keep revisions in it; you may take what is here.",
  "library/keep-nothing":
    "There is no procedure of your own on this device’s shelf. Save one first, or bring one in.",
  "library/keep-done": "{$name :message} is in the library.",
  "library-link/lead-may": "keeps revisions in the library, and lets others in",
  "library-link/reader-may": "takes revisions to its device, and keeps none",
  "library-link/take-follower-off": "Take {$follower} off the library",
  "library-link/take-unnamed-off": "Take this device off the library",
  "library-link/take-all-off-question": "Take everybody else off this library?",
  "library-link/take-all-off-how":
    ".input {$others :integer} .match $others 0 {{For when a code or a device is in wrong hands. Nobody else is known to be in the library; all codes end. What was kept stays.}} one {{For when a code or a device is in wrong hands. {$others} other device or hub goes on alone, and nothing more comes from it until it has a new code; all codes end. What was kept stays.}} * {{For when a code or a device is in wrong hands. {$others} other devices or hubs go on alone, and nothing more comes from them until they have a new code; all codes end. What was kept stays.}}",
  "library-link/all-taken-off":
    ".input {$count :integer} .match $count 0 {{Nobody else was in the library. All its codes have ended.}} one {{{$count} device was taken off the library. All its codes have ended.}} * {{{$count} devices were taken off the library. All its codes have ended.}}",
  "library-link/key-tied":
    "kept on this tablet, where nobody can copy it: no other device can take this tablet’s place in the library",
  "library-link/key-copyable":
    "kept on this tablet as a number, since its browser keeps no keys: whoever gets at what the tablet keeps could copy it and take its place in the library",
  "library-link/key-insecure":
    "none, because this page was not opened over TLS: if this tablet leaves the library, it needs the hub’s owner to come in again",
  "library-link/key-unsupported":
    "none, because this browser cannot make one: if this tablet leaves the library, it needs the hub’s owner to come in again",
  "library-link/key-not-kept":
    "none, because this tablet could not keep one: if it leaves the library, it needs the hub’s owner to come in again",
  "library-link/only-here":
    ".input {$count :integer} .match $count one {{{$count} revision of another device is only on this one. To bring it to the hub, leave it and link the library again with the owner’s code.}} * {{{$count} revisions of other devices are only on this one. To bring them to the hub, leave it and link the library again with the owner’s code.}}",
  "library-link/scan-or-open": "Scan it, or open {$host}, choose “Join a walk”, and there “Hub’s library”.",
  "guide/library": "Help: the hub’s library",
  "guide/library-take":
    "A revision that is taken lies on the shelf of this device, with who kept it and why. What is in the library does not change by that.",
  "guide/library-keep":
    "Keeping a revision puts its file into the library as it is. Say what it was made from. Nothing there is ever overwritten or taken out.",
  "guide/library-apart":
    "When two planners went on from one revision, both are there, and it is said. Bringing them together opens the comparison with the revision that both were made from.",
  "guide/library-figures":
    "A revision is named by its text: one text is one revision, whoever keeps it again.",
  "guide/library-offline":
    "The library works without a link. What is kept meanwhile is sent when the link is back, and what others kept comes in.",
  "guide/library-roles":
    "With the owner’s code you lead, and may make codes for others. Who was let in as marker or watcher may take revisions and keep none.",
} as const;
