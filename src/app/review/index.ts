export { trackTicks } from "./pet-track.tsx";
export type { ReviewViewProps } from "./review-view.tsx";
export { ReviewView } from "./review-view.tsx";
export { WalkReview } from "./walk-review.tsx";
