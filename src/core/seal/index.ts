export { isSealKey } from "./seal-fits.ts";
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
