export type { AskSeal } from "./ask-seal-worker.ts";
export { LazyExtractView, LazySealSection, LazyWalkCode } from "./lazy-seal.tsx";
