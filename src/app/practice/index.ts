export { PracticeGuide } from "./practice-guide.tsx";
export { PracticeReview } from "./practice-review.tsx";
