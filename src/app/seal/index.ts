export type { AskSeal } from "./ask-seal-worker.ts";
export { LazySealSection, LazyWalkCode } from "./lazy-seal.tsx";
