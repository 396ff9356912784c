export type { ChainEnd } from "./chain-end.ts";
export { chainEndOf, chainedTo, isChained } from "./chain-end.ts";
export { isSealKey } from "./seal-fits.ts";
export type { Sealer } from "./sealed.ts";
export { sealed } from "./sealed.ts";
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
