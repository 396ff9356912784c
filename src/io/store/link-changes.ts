export { clockChange } from "./clock-change.ts";
export { settleChange } from "./settle-change.ts";
export { takeInChange } from "./take-in-change.ts";
