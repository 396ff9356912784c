/** What a log is worth as a record. */
export const sealWords = {
  "seal/verdict-whole": "whole",
  "seal/verdict-intact": "intact",
  "seal/verdict-partly": "partly vouched for",
  "seal/verdict-cut": "cut",
  "seal/verdict-forked": "forked",
  "seal/verdict-broken": "broken",
  "seal/log-whole":
    "Whole: the walk is closed, and every entry is as it was when a trusted hub made its last checkpoint.",
  "seal/log-intact":
    "Intact: nothing was changed, and everybody is vouched for; what stands behind the last checkpoint could have been cut unnoticed.",
  "seal/log-partly":
    "Partly vouched for: nothing shows that an entry was changed, but some have no seal, or a key that nobody trusted vouches for.",
  "seal/log-cut": "Cut: entries are missing.",
  "seal/log-forked": "Forked: a device’s key sealed two histories.",
  "seal/log-broken": "Broken: an entry was changed, put in, or put in another order since it was made.",
  "seal/quick": "This was a quick look: one seal a run of entries.",
  "seal/extract-whole":
    "Whole: every entry in this extract is as it was when a trusted hub made the checkpoint.",
  "seal/extract-intact":
    "Intact: nothing was changed, and everybody is vouched for, but the checkpoint did not hold some of the entries.",
  "seal/extract-partly":
    "Partly vouched for: nothing shows that an entry was changed, but some have no seal, or a key that nobody trusted vouches for.",
  "seal/extract-cut": "Cut: entries are missing.",
  "seal/extract-forked": "Forked: a device’s key sealed two histories.",
  "seal/extract-broken":
    "Broken: an entry was changed or put in since it was made, or its proof does not hold.",
  "seal/extract-proves-not":
    "This does not prove what the entries that were left out say, that these are the ones that matter, that an entry is true, who held the tablet, the true time, or that the hub is honest.",
  "seal/found-seal-does-not-fit": "the seal does not fit the entry",
  "seal/found-other-key": "it has another key than it was admitted with, or one that is refused",
  "seal/found-does-not-follow": "it does not follow the entry before it",
  "seal/found-forged-twin": "there are two entries of this number, and one is forged",
  "seal/found-seals-stripped": "it was admitted with a key, and no entry has a seal",
  "seal/found-not-proven": "its proof does not lead to the checkpoint",
  "seal/found-other-walk": "it is an entry of another walk",
  "seal/found-other-entries":
    "the checkpoint held other entries than are here; it does not tell who changed them",
  "seal/found-other-order":
    "the checkpoint held the entries in another order than here; it does not tell who changed it",
  "seal/found-unreadable-checkpoint": "the checkpoint cannot be read",
  "seal/found-two-histories": "there are two histories, both sealed with its key",
  "seal/found-missing": "from this number on an entry is missing",
  "seal/found-unsealed": "from this number on entries have no seal",
  "seal/found-nobody-vouches": "nobody trusted vouches for its key",
  "seal/found-other-role": "it made an entry that its role may not make",
  "seal/checkpoint-fits": "fits",
  "seal/checkpoint-cut": "held more than is here",
  "seal/checkpoint-other-entries": "held other entries",
  "seal/checkpoint-other-order": "held another order",
  "seal/checkpoint-unreadable": "cannot be read",
  "seal/checkpoint-not-looked-at": "not looked at",
  "seal/trusted": "trusted",
  "seal/not-trusted": "not trusted",
  // The spelling alphabet of ICAO (Annex 10, volume II) and ITU (Radio Regulations, appendix 14).
  "seal/letter":
    ".input {$letter :string} .match $letter A {{Alfa}} B {{Bravo}} C {{Charlie}} D {{Delta}} E {{Echo}} F {{Foxtrot}} G {{Golf}} H {{Hotel}} J {{Juliett}} K {{Kilo}} M {{Mike}} N {{November}} P {{Papa}} Q {{Quebec}} R {{Romeo}} S {{Sierra}} T {{Tango}} U {{Uniform}} V {{Victor}} W {{Whiskey}} X {{X-ray}} Y {{Yankee}} Z {{Zulu}} |0| {{Zero}} |2| {{Two}} |3| {{Three}} |4| {{Four}} |5| {{Five}} |6| {{Six}} |7| {{Seven}} |8| {{Eight}} |9| {{Nine}} * {{{$letter}}}",
  "seal/title": "Is the log as it was entered?",
  "seal/in-short": "The log is {$verdict}",
  "seal/in-short-unknown": "The log is not verified",
  "seal/loading": "What tells whether the log is as it was entered is being loaded.",
  "seal/missing":
    "What tells whether the log is as it was entered could not be loaded. Nothing else is affected.",
  "seal/working-quick": "A quick look at the seals is on the way.",
  "seal/working-full": "Every seal is looked at: {$done :integer} of {$of :integer} entries so far.",
  "seal/cancel": "Stop looking",
  "seal/cancelled": "The log was not verified: looking was stopped.",
  "seal/failed": "The log could not be verified here. The command line can verify an exported log.",
  "seal/look-quick": "Look quickly",
  "seal/look-full": "Look at every seal",
  "seal/looked-full": "Every seal was looked at.",
  "seal/newer":
    ".input {$count :integer} .match $count one {{One entry has come since, and nothing is said of it.}} * {{{$count} entries have come since, and nothing is said of them.}}",
  "seal/changed-since": "The log has changed since.",
  "seal/devices": "Who entered what",
  "seal/device-as": "{$name}, {$role}",
  "seal/role-hub": "hub",
  "seal/not-admitted": "no hub says who this is",
  "seal/device-entries":
    ".input {$entries :integer} .match $entries one {{One entry}} * {{{$entries} entries}}",
  "seal/device-sealed": "{$sealed :integer} sealed",
  "seal/device-behind": "{$behind :integer} behind the last trusted checkpoint",
  "seal/found-at": "Number {$number :integer}: {$what}.",
  "seal/found-source": "All of it: {$what}.",
  "seal/checkpoints":
    ".input {$count :integer} .match $count one {{One checkpoint}} * {{{$count} checkpoints}}",
  "seal/checkpoint":
    ".input {$entries :integer} .match $entries one {{{$code}, of {$entries} entry, by {$by} ({$trust}): {$state}}} * {{{$code}, of {$entries} entries, by {$by} ({$trust}): {$state}}}",
  "seal/code-title": "Voice code",
  "seal/code-of":
    ".input {$entries :integer} .match $entries one {{The code of the one entry here.}} * {{The code of the {$entries} entries here.}}",
  "seal/code-how":
    "Read it aloud to another site, letter by letter. The same code there means the same entries, in the same order.",
  "seal/code-make": "Work out the voice code",
  "seal/code-again": "Work it out again",
  "seal/code-working": "The voice code is being worked out.",
  "seal/code-verdict": "Whether the log is as it was entered stands in the review.",
  "seal/code-root": "Root",
  "seal/code-order": "Order",
  "seal/code-qr": "QR code: the walk, the number of entries, root and order",
  "seal/heard-label": "The code that the other site reads",
  "seal/heard-letters":
    "Twelve letters, in any case, with or without hyphens. I, L, O and 1 are never among them.",
  "seal/heard-same":
    ".input {$entries :integer} .match $entries one {{The same: both sites hold this one entry.}} * {{The same: both sites hold these {$entries} entries, in the same order.}}",
  "seal/heard-same-then":
    ".input {$entries :integer} .match $entries one {{The same as at a checkpoint of {$entries} entry: both sites held the same then. Here there are {$all :integer} now.}} * {{The same as at a checkpoint of {$entries} entries: both sites held the same then. Here there are {$all :integer} now.}}",
  "seal/heard-differs": "Not the same. Something was misheard, or the other site holds other entries.",
  "seal/heard-group": "Group {$group :integer}: here {$here}, there {$there}",
  "seal/heard-letters-said": "{$letters} ({$said})",
  "seal/trust-title": "Hubs that you trust",
  "seal/trust-none":
    "You trust no hub yet, so that the best that can be said of a log is that it is partly vouched for.",
  "seal/trust-how":
    "The key of a hub stands on its start screen and on printed reviews. Take it from there, never from the log that is to be verified. It is kept on this device.",
  "seal/trust-field": "Key of a hub",
  "seal/trust-add": "Trust this key",
  "seal/trust-bad": "That is no key of a hub: it has 43 letters, figures, hyphens and underscores.",
  "seal/trust-forget": "Forget",
  "seal/trust-forget-which": "Forget the key {$key}",
  "seal/trust-in-log":
    "This log names the hub {$name} with the key below. Hold it against the hub’s own screen, or a sheet that was printed there, before you trust it.",
  "seal/trust-same": "It is the same there: trust it",
  "seal/hub-key": "Key of {$name}",
  "seal/extract-title": "Extract for others",
  "seal/extract-how":
    "A few entries in full, each with its proof that a hub’s checkpoint held it. Of the others it has the numbers alone; a short one that stands next to an entry that is shown can be guessed at and the guess tested.",
  "seal/extract-kinds": "Which entries",
  "seal/extract-kind": "{$kind :message} ({$count :integer})",
  "seal/extract-task": "Of which task",
  "seal/extract-all-tasks": "Whatever they are about",
  "seal/extract-make": "Make the extract",
  "seal/extract-working": "The extract is being made.",
  "seal/extract-made":
    ".input {$chosen :integer} .match $chosen one {{The extract has one entry in full, and leaves {$left :integer} out.}} * {{The extract has {$chosen} entries in full, and leaves {$left :integer} out.}}",
  "seal/extract-nothing-chosen": "No entry of the log is of that kind and about that task.",
  "seal/extract-no-checkpoint":
    "The log has no checkpoint of a hub that fits it: there is nothing to prove an extract by.",
  "seal/extract-behind":
    ".input {$count :integer} .match $count one {{No checkpoint held one of these entries yet. Try again once the hub has made another one.}} * {{No checkpoint held {$count} of these entries yet. Try again once the hub has made another one.}}",
  "seal/extract-failed":
    "The extract could not be made here. The command line can make one of an exported log.",
  "seal/extract-no-head": "does not say what it is an extract of",
  "seal/extract-no-path": "has a proof that cannot be read",
  "seal/extract-of":
    ".input {$entries :integer} .match $entries one {{An extract of {$walk}: {$entries} entry in full, proven by a checkpoint of {$held :integer}.}} * {{An extract of {$walk}: {$entries} entries in full, proven by a checkpoint of {$held :integer}.}}",
  "seal/extract-of-unproven":
    ".input {$entries :integer} .match $entries one {{An extract of {$walk}: {$entries} entry in full, and no checkpoint to prove it by.}} * {{An extract of {$walk}: {$entries} entries in full, and no checkpoint to prove them by.}}",
  "seal/extract-left-out": "Left out of {$source}: {$numbers}.",
  "seal/extract-page": "An extract of a log",
  "seal/extract-code-of": "The code of the checkpoint; it held so many entries: {$entries :integer}.",
  "seal/extract-heard-same": "The same: the other site holds what the checkpoint held.",
  "seal/extract-entries": "The entries it shows",
  "seal/extract-hub-entries": "What hubs entered ({$count :integer})",
  "seal/extract-number": "{$name}, number {$number :integer}",
  "seal/extract-nothing": "No entry of it can be read.",
  "seal/extract-gone": "The extract is no longer open: choose its file on the shelf once more.",
  "seal/may-be-kept-back":
    "This is a rehearsal that is not closed. Its hub keeps surprises back until then, so that what is missing here may be theirs: look again after the closing.",
  "seal/proves-not":
    "This does not prove that an entry is true, who held the tablet, the true time, what was never entered, a cut behind the last checkpoint, or that a hub is honest which holds the only checkpoint.",
} as const;
