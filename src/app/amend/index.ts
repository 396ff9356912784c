export type { AmendmentDraft } from "./amend-panel.tsx";
export { AmendPanel, mayBeAmended, NO_DRAFT } from "./amend-panel.tsx";
export { AmendmentPanel } from "./amendment-panel.tsx";
export { AmendmentStrip } from "./amendment-strip.tsx";
export { bringing } from "./contingency-wishes.tsx";
export { amendmentKey, amendmentsSeenHere, rememberSeen, unseenAmendments } from "./seen-amendments.ts";
export { fitted, wishesOf } from "./wish.ts";
