export { asksForPage, hasApp, serveApp } from "./app-files.ts";
