export { CursorSeal } from "./cursor-seal.ts";
