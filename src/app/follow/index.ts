export type { KeptWords } from "./follow-bar.tsx";
export { FollowView } from "./follow-view.tsx";
