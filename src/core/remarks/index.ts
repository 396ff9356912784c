export type { FoldedAgreement, FoldedComment, FoldedRemarks } from "./fold-remarks.ts";
export { foldRemarks } from "./fold-remarks.ts";
export { mergeRemarks } from "./merge-remarks.ts";
export type { ReadRemarks } from "./read-remarks.ts";
export { MOST_REMARKS, readRemark, readRemarks, writeRemarks } from "./read-remarks.ts";
export type { Remark, RemarkKind } from "./remark.ts";
export { REMARK_FORMAT, REMARK_KINDS } from "./remark.ts";
export { remarkFindings } from "./remark-findings.ts";
