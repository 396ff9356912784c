export { WristCards } from "./wrist-cards.tsx";
