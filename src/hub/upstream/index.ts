export type { FarAddress } from "./far-address.ts";
export { readFarAddress } from "./far-address.ts";
export type { FarClient, RelayName } from "./far-client.ts";
export { farClient } from "./far-client.ts";
export { askFar } from "./far-request.ts";
export { machineTime } from "./machine-time.ts";
export type { Upstream } from "./upstream.ts";
export { startUpstream } from "./upstream.ts";
export type { UpstreamParts } from "./upstream-parts.ts";
