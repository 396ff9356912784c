export { freeManuscriptKey } from "./free-manuscript-key.ts";
export { NewForm } from "./side-forms.tsx";
export { useManuscript } from "./use-manuscript.ts";
export type { WrittenTextProps } from "./write-view.tsx";
export { WriteView } from "./write-view.tsx";
