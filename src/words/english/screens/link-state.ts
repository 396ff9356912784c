/** How a link stands, what came of it, and why it fails: said by the link itself, of a tablet and of a hub alike. */
export const linkStateWords = {
  "link/no-answer": "No answer came in time.",
  "link/nothing-heard": "Nothing was heard for {$seconds :integer} s.",
  "link/answer-unfit": "The answer does not fit what was sent.",
  "link/clock-was-set": "The clock of this device was set while it was compared.",
  "link/not-reached": "The hub cannot be reached.",
  "link/device-refused": "The hub refused this device.",
  "link/no-hub-here": "There is no hub here.",
  "link/unknown-hub": "What answers here is no hub that this app knows.",
  "link/no-hub": "What answers here is no hub.",
  "link/connection-lost": "The connection to the hub was lost.",
  "link/not-the-owners-code": "This is not the owner’s code of this hub: look at its console.",
  "link/name-of-another":
    "The name of this tablet belongs to another key in this walk, as if its data had been copied from another tablet. Export what is only here, clear the data of this site in the browser, and join as a new tablet.",
  "link/name-taken":
    "This tablet is in the walk already, without a key, and the hub cannot tell that it is the same. Have the lead take it off the walk, or join with the owner’s code.",
  "link/name-left":
    "This tablet wrote in this walk without a key and has left, so that the hub cannot tell that it is the same. Join with the owner’s code, or clear the data of this site in the browser and join as a new tablet.",
  "link/name-elsewhere":
    "This tablet is known from the hub on the other side of the gap: join the walk at that hub.",
  "link/walk-not-linked": "This walk is not linked with a hub.",
  "link/which-hub": "Say first where the hub is.",
  "link/not-an-address":
    "That is no address of a hub. It begins with https:// and ends with the port, as the hub’s console shows it.",
  "link/not-kept": "This tablet could not keep it: {$why :message}.",
  "link/trouble-here": "This tablet cannot keep up with the hub: {$trouble :message}. It goes on trying.",
  "link/reading-anew": "what was kept of the walk is gone, and it is read once more",
  "link/unreadable":
    ".input {$count :integer} .match $count one {{{$count} entry of the hub is missing here: this version of the app cannot read them. Update the app.}} * {{{$count} entries of the hub are missing here: this version of the app cannot read them. Update the app.}}",
  "link/restamped":
    ".input {$count :integer} .match $count one {{{$count} entry was put in order by the hub’s clock, because the clock of this tablet ran ahead. Set it right.}} * {{{$count} entries were put in order by the hub’s clock, because the clock of this tablet ran ahead. Set it right.}}",
  "link/restamped-by":
    ".input {$count :integer} .match $count one {{{$count} entry was put in order by the hub’s clock, because the clock of this tablet is {$by :length} ahead. Set it right.}} * {{{$count} entries were put in order by the hub’s clock, because the clock of this tablet is {$by :length} ahead. Set it right.}}",
  "link/entered-anew":
    ".input {$count :integer} .match $count one {{{$count} entry was entered again under new numbers, because the hub had others in their place. Nothing is lost.}} * {{{$count} entries were entered again under new numbers, because the hub had others in their place. Nothing is lost.}}",
  "link/set-aside":
    ".input {$count :integer} .match $count one {{{$count} entry was set aside and does not count: {$why :message}.}} * {{{$count} entries were set aside and do not count: {$why :message}.}}",
  "link/aside-refused": "the hub refused them",
  "link/aside-not-an-entry": "the hub cannot read such entries",
  "link/aside-other-walk": "the hub takes entries of this walk only",
  "link/aside-other-source": "the hub takes only what was made on this tablet",
  "link/aside-role": "the role of this tablet may not write such entries",
  "link/aside-ahead": "the hub takes no entries so far ahead in time",
  "link/aside-limit": "they are too long for the hub, or there is no more room for them",
  "link/aside-conflict": "the hub has others in that place",
} as const;
