export { ShelfPage } from "./shelf-page.tsx";
