export { WalksView } from "./walks-view.tsx";
