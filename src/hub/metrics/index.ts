export { HubMetrics } from "./hub-metrics.ts";
