export { eventText } from "./event-text.ts";
export { FanOut } from "./fan-out.ts";
export { Follower } from "./follower.ts";
