export { base64urlOf } from "./base64url.ts";
export type { ChainEnd } from "./chain-end.ts";
export { chainEndOf, chainedTo, isChained } from "./chain-end.ts";
export type { Choice } from "./chosen-by.ts";
export { chosenBy, kindOf } from "./chosen-by.ts";
export type { Extract, ReadExtract } from "./extract.ts";
export { readExtract, writeExtract } from "./extract.ts";
export type { ExtractMade } from "./extract-of.ts";
export { extractOf } from "./extract-of.ts";
export { fittingSeals } from "./fitting-seals.ts";
export type { HeardCode } from "./heard-code.ts";
export { heardCode } from "./heard-code.ts";
export { linkOf } from "./link-of.ts";
export type { FitsEd25519 } from "./seal-fits.ts";
export { isSealKey, sealFitsBy } from "./seal-fits.ts";
export type { PlatformFits } from "./seal-looks.ts";
export { SealLooks } from "./seal-looks.ts";
export type { Sealer } from "./sealed.ts";
export { sealed, toBeSealed } from "./sealed.ts";
export { spelled } from "./spelled.ts";
export type { LinkedPlace, Tally } from "./tally.ts";
export { tallyOf } from "./tally.ts";
export type {
  CheckpointVerified,
  SealFinding,
  SealFindingKind,
  SourceVerified,
  Verdict,
  Verification,
} from "./verification.ts";
export type { ExtractVerified } from "./verify-extract.ts";
export { verifyExtract } from "./verify-extract.ts";
export type { Verifying } from "./verify-log.ts";
export { verifyLog } from "./verify-log.ts";
export { verifyLogBy } from "./verify-log-by.ts";
export { codedText, typedGroups } from "./voice-code.ts";
