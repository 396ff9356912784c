export { ContactTimes } from "./contact-times.tsx";
export { LightAndStart } from "./light-and-start.tsx";
