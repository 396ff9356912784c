export { startNews } from "./news.ts";
