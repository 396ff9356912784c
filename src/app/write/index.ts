export { freeManuscriptKey } from "./free-manuscript-key.ts";
export { NewForm } from "./side-forms.tsx";
export { useManuscript } from "./use-manuscript.ts";
export { WriteView } from "./write-view.tsx";
