/** What a hub says of another one that it is linked with. */
export const farHubWords = {
  "far/unknown-hub": "What answers there is no hub that this one knows.",
  "far/connection-lost": "The connection to the other hub was lost.",
  "far/answered": "The other hub answered {$status :integer}.",
  "far/not-reached": "The hub at {$origin} cannot be reached ({$why :message}).",
  "far/other-certificate": "it shows another certificate than the one named in --upstream",
  "far/own-entry-unreadable": "An entry of this hub cannot be read by this version: {$why :message}.",
  "far/no-relay": "The invitation is not one for a hub: make one of the role relay.",
  "far/itself": "That is this hub itself: give the address of another one.",
  "far/other-hub": "Other hub at {$origin}: {$what}",
  "far/entries-refused":
    ".input {$count :integer} .match $count one {{{$count} entry was refused: {$why}}} * {{{$count} entries were refused: {$why}}}",
} as const;
