export { type ExportKind, ReviewView, type ReviewViewProps } from "./review-view.tsx";
