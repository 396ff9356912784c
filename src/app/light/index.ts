export { LightAndStart } from "./light-and-start.tsx";
