export type { HubParts } from "./hub-parts.ts";
export type { RateLimits } from "./rate-limits.ts";
export { RATE_LIMITS } from "./rate-limits.ts";
export type { ServerOptions } from "./server.ts";
export { makeServer } from "./server.ts";
