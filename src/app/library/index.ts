export { LibraryView } from "./library-view.tsx";
