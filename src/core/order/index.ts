export type { Link, Network } from "./network.ts";
export { deadlockFinding, networkOf } from "./network.ts";
