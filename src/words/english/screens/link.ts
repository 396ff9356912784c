/** Joining, sharing and following a walk over a hub. */
export const linkWords = {
  "link/clock-set-back":
    "The clock of this device was set back by {$by :length}. The times of this walk go on as if it had not been.",
  "link/clock-set-ahead":
    "The clock of this device was set ahead by {$by :length}. The times of this walk go on as if it had not been.",
  "link/join-title": "Join a walk",
  "link/join-what": "With the code that its lead shows",
  "link/fetching": "Fetching the walk from the hub…",
  "link/fetching-of": "Fetching the walk from the hub: {$come :integer} of {$of :integer} entries…",
  "link/asking-for-walk": "This walk is not on this device. The hub is asked for it…",
  "link/no-walk-no-hub":
    "There is no such walk on this device, and no hub answers from which it could come back. It is asked for again every 10 seconds.",
  "link/no-walk-no-member":
    "There is no such walk on this device, and the hub does not know this browser in one of this name. If it was followed here, what this device kept has been cleared: join the walk with a new code, and all that had reached the hub comes back.",
  "link/no-walk-other-name":
    "There is no such walk on this device. It was followed here before what this device kept was cleared, and this device has begun other walks since: join the walk with a new code, and all that had reached the hub comes back.",
  "link/who-uses": "Who uses this tablet",
  "link/asking": "Asking the hub…",
  "link/over-the-gap": "Over the gap",
  "link/nobody-known": "The hub has not said yet who follows.",
  "link/unnamed": "unnamed",
  "link/this-tablet": "this tablet",
  "link/take-off": "Take off",
  "link/take-all-off": "Take everybody off …",
  "link/take-all-off-question": "Take everybody else off this walk?",
  "link/take-all-off-how":
    ".input {$others :integer} .match $others 0 {{For when a code or a tablet is in wrong hands. Nobody else is known to be in the walk; all codes end. What was entered stays.}} one {{For when a code or a tablet is in wrong hands. {$others} other device or hub goes on alone, and nothing more comes from it until it has a new code; all codes end. What was entered stays.}} * {{For when a code or a tablet is in wrong hands. {$others} other devices or hubs go on alone, and nothing more comes from them until they have a new code; all codes end. What was entered stays.}}",
  "link/take-all-off-now": "Take everybody off",
  "link/keep-all": "Keep them",
  "link/all-taken-off":
    ".input {$count :integer} .match $count 0 {{Nobody else was in the walk. All codes have ended.}} one {{{$count} device was taken off. All codes have ended.}} * {{{$count} devices were taken off. All codes have ended.}}",
  "link/take-follower-off": "Take {$follower} off the walk",
  "link/take-unnamed-off": "Take this follower off the walk",
  "link/offer-marker": "Marker",
  "link/offer-marker-may": "marks steps, records, notes",
  "link/offer-watcher": "Watcher",
  "link/offer-watcher-may": "reads only",
  "link/offer-trainer": "Trainer",
  "link/offer-trainer-may": "sees all, and fires surprises in a rehearsal",
  "link/offer-lead": "Lead",
  "link/offer-lead-may": "also closes the walk and lets others in",
  "link/no-code": "The hub gave no code: {$why}",
  "link/invite": "Let another tablet in",
  "link/role": "Role",
  "link/how-many-tablets": "How many tablets it lets in",
  "link/code-for":
    ".input {$count :integer} .match $count one {{Good for {$count} tablet.}} * {{Good for {$count} tablets, each once.}}",
  "link/make-code": "Make a code",
  "link/qr-code": "The address to join at, as a QR code",
  "link/lets-in-as-lead": "Lets in as lead for another {$left :margin}.",
  "link/lets-in-as-marker": "Lets in as marker for another {$left :margin}.",
  "link/lets-in-as-watcher": "Lets in as watcher for another {$left :margin}.",
  "link/lets-in-as-trainer": "Lets in as trainer for another {$left :margin}.",
  "link/lets-in-as-relay": "Lets in as relay for another {$left :margin}.",
  "link/code-expired": "This code has expired: make another.",
  "link/open-codes": "Codes that are still good",
  "link/open-code":
    ".input {$count :integer} .match $count one {{As {$role}: {$count} tablet more, for another {$left :margin}.}} * {{As {$role}: {$count} tablets more, for another {$left :margin}.}}",
  "link/end-code": "End this code",
  "link/codes-not-told": "The hub did not say which codes are still good: {$why}",
  "link/scan-or-open": "Scan it, or open {$host} and choose “Join a walk”.",
  "link/code-field": "Code (nine letters and digits)",
  "link/join-example": "for example Ground, or IV",
  "link/join": "Join the walk",
  "link/join-how":
    "The lead of the walk finds a code under More, Link. The walk is then kept on this tablet too, and goes on here when the link is lost.",
  "link/state-alone": "alone",
  "link/state-linking": "linking: trying to reach the hub",
  "link/state-linked": "linked",
  "link/state-ended": "ended",
  "link/title": "Link",
  "link/hub": "Hub",
  "link/role-here": "This tablet",
  "link/key-here": "Its key",
  "link/key-tied":
    "kept on this tablet, where nobody can copy it: no other device can take this tablet’s place in the walk",
  "link/key-copyable":
    "kept on this tablet as a number, since its browser keeps no keys: whoever gets at what the tablet keeps could copy it and take its place in the walk",
  "link/key-insecure":
    "none, because this page was not opened over TLS: if this tablet leaves the walk, it needs the hub’s owner to come in again",
  "link/key-unsupported":
    "none, because this browser cannot make one: if this tablet leaves the walk, it needs the hub’s owner to come in again",
  "link/key-not-kept":
    "none, because this tablet could not keep one: if it leaves the walk, it needs the hub’s owner to come in again",
  "link/entries": "Entries",
  "link/last-word": "Last word",
  "link/clock-here": "Clock here",
  "link/beyond": "Over the gap",
  "link/beyond-hub": "{$what}.",
  "link/followers": "Followers",
  "link/leave-title": "Leave",
  "link/leave-how": "What is kept here stays here, and no more is sent or fetched.",
  "link/leave-unsent":
    ".input {$count :integer} .match $count one {{What is kept here stays here, and no more is sent or fetched. {$count} entry has not been sent yet.}} * {{What is kept here stays here, and no more is sent or fetched. {$count} entries have not been sent yet.}}",
  "link/leave": "Leave the hub",
  "link/clock-agrees":
    "agrees with the hub’s (±\u00a0{$error :number minimumFractionDigits=2 maximumFractionDigits=2}\u00a0s)",
  "link/clock-ahead":
    "{$size :message} ahead of the hub’s (±\u00a0{$error :number minimumFractionDigits=2 maximumFractionDigits=2}\u00a0s)",
  "link/clock-behind":
    "{$size :message} behind the hub’s (±\u00a0{$error :number minimumFractionDigits=2 maximumFractionDigits=2}\u00a0s)",
  "link/seconds": "{$size :number minimumFractionDigits=1 maximumFractionDigits=1} s",
  "link/minutes": "{$size :integer} min",
  "link/hours": "{$size :number minimumFractionDigits=1 maximumFractionDigits=1} h",
  "link/all-sent": "all sent",
  "link/fetched-of": "{$come :integer} of {$of :integer} entries fetched",
  "link/not-sent": "{$count :integer} not sent",
  "link/only-here":
    ".input {$count :integer} .match $count one {{{$count} entry of another device is only on this tablet. To bring it to the hub, leave it and share the walk again with the owner’s code.}} * {{{$count} entries of other devices are only on this tablet. To bring them to the hub, leave it and share the walk again with the owner’s code.}}",
  "link/never-heard": "never heard",
  "link/heard-seconds-ago": "heard {$seconds :integer} s ago",
  "link/heard-ago": "heard {$ago :length} ago",
  "link/in-memory": "In memory only",
  "link/export-before-closing": "export before closing",
  "link/bar-alone": "This device alone",
  "link/kept-here": "log kept here",
  "link/bar-linking": "Linking · {$heard}",
  "link/bar-linked": "Linked",
  "link/bar-linked-heard": "Linked · {$heard}",
  "link/bar-ended": "Link ended",
  "link/kept-here-only": "kept here only",
  "link/at-utc": "{$at :utc form=time-second} UTC",
  "link/another-hub": "another hub",
  "link/is-reading": "is reading",
  "link/seen-nothing": "has seen nothing yet",
  "link/seen-all": "has seen all",
  "link/seen-up-to": "has seen all up to {$moment}",
  "link/away-seen-up-to": "away · has seen all up to {$moment}",
  "link/hub-takes-nothing": "{$hub} takes nothing: {$why}",
  "link/hub-refused": "{$hub} takes nothing: it was refused",
  "link/hub-got-nothing": "{$hub} has got nothing yet",
  "link/hub-got-all": "{$hub} has got all",
  "link/hub-got-up-to": "{$hub} has got all up to {$moment}",
  "link/waiting-to-be-sent": "{$count :integer} waiting to be sent",
  "link/another-device": "Another device",
  "link/overruled-done":
    "Your mark of step {$number} “{$step}” did not count: {$who} had skipped it first. Open the step to change that.",
  "link/overruled-skip":
    "Your skip of step {$number} “{$step}” did not count: {$who} had marked it done first. Open the step to change that.",
  "link/overruled-asked-again":
    "Your mark of step {$number} “{$step}” did not count: its decision had been opened again. If it was done, open the step and mark it done out of order, with the reason.",
  "link/overruled-settled":
    "Step {$number}, {$step}: what you decided did not count, because {$who} had said as lead which outcome holds. Ask the lead.",
  "link/overruled-dropped":
    "Your mark of step {$number} “{$step}” did not count: {$who} had taken the step out of the plan.",
  "link/share-how":
    "This walk is on this device alone. Brought to the hub at {#b}{$host}{/b}, it can be followed and marked from other tablets; everything here is still kept here first.",
  "link/share-how-anywhere":
    "This walk is on this device alone. Brought to a hub, it can be followed and marked from other tablets; everything here is still kept here first.",
  "link/hub-address": "Address of the hub",
  "link/hub-address-example": "for example https://vehicle.local:4173",
  "link/hub-address-how":
    "As the hub’s console shows it, beginning with https://, or the whole link of an invitation. This tablet has to trust the hub’s certificate.",
  "link/share-example": "for example Ground",
  "link/owner-code": "Owner’s code of the hub",
  "link/owner-code-where": "The hub shows it on its console when it starts.",
  "link/share": "Share this walk",
  "link/no-walk-yet":
    "This is the hub’s own code, and the hub has no walk yet. Share one from the tablet that has it.",
  "link/which-walk": "This is the hub’s own code: which walk will you lead?",
  "link/title-not-known": "Not known yet",
  "link/walk-entries":
    ".input {$count :integer} .match $count one {{{$walk}, {$count} entry}} * {{{$walk}, {$count} entries}}",
} as const;
