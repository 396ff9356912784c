export { actorsText } from "./actors-text.ts";
export type { KeptWords } from "./follow-bar.tsx";
export { FollowView } from "./follow-view.tsx";
export type { Notice } from "./notice-strip.tsx";
