export type { ChainEnd } from "./chain-end.ts";
export { chainEndOf, chainedTo, isChained } from "./chain-end.ts";
export { linkOf } from "./link-of.ts";
export { isSealKey } from "./seal-fits.ts";
export type { Sealer } from "./sealed.ts";
export { sealed, toBeSealed } from "./sealed.ts";
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
export { verifyLog } from "./verify-log.ts";
export { differingGroups } from "./voice-code.ts";
