export { eventText } from "./event-text.ts";
export { FanOut } from "./fan-out.ts";
export { Subscriber } from "./subscriber.ts";
