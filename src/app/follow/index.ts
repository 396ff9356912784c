export { actorsText } from "./actors-text.ts";
export { AlertMark } from "./alert-mark.tsx";
export { AmendedTag } from "./amended-tag.tsx";
export type { KeptWords } from "./follow-bar.tsx";
export { FollowView } from "./follow-view.tsx";
export { NoteMark } from "./note-mark.tsx";
export type { Notice } from "./notice-strip.tsx";
