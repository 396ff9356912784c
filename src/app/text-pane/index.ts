export { LazyTextPane } from "./lazy-text-pane.tsx";
