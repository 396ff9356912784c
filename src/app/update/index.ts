export { Updates } from "./updates.tsx";
