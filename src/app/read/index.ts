export { FindingItem } from "./finding-item.tsx";
export { FindingsOfUnreadable } from "./findings-of-unreadable.tsx";
export { ReadView } from "./read-view.tsx";
