export type { BlankValues } from "./blank-values.ts";
export type { FilledIn, FragmentPlace } from "./filled-in.ts";
export { filledIn } from "./filled-in.ts";
export type { Fragment, FragmentBlank } from "./fragment.ts";
export { FRAGMENT_FORMAT, FRAGMENT_LIMITS, fragmentJsonSchema } from "./fragment.ts";
export type { FragmentOffer } from "./fragment-offers.ts";
export { fragmentOffers } from "./fragment-offers.ts";
export type { ReadFragment } from "./read-fragment.ts";
export { readFragment } from "./read-fragment.ts";
