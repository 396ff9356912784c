export { MarksView } from "./marks-view.tsx";
