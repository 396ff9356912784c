export { takeInSurprises } from "./take-in-surprises.ts";
export { TrainView } from "./train-view.tsx";
export { useSurprisesText } from "./use-surprises-text.ts";
