export { WalkReview } from "./walk-review.tsx";
