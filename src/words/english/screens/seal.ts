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
  "seal/found-other-entries": "the checkpoint held other entries",
  "seal/found-other-order": "the checkpoint held the entries in another order",
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
  "seal/extract-no-head": "does not say what it is an extract of",
  "seal/extract-no-path": "has a proof that cannot be read",
  "seal/proves-not":
    "This does not prove that an entry is true, who held the tablet, the true time, what was never entered, a cut behind the last checkpoint, or that a hub is honest which holds the only checkpoint.",
} as const;
