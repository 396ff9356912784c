export { useVisibleWidth } from "./use-visible-width.ts";
