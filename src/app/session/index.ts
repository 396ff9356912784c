export { storedFollower, storeFollower } from "./follower-role.ts";
export { chooseLight, currentLightChoice } from "./light-choice.ts";
export { PacedClock } from "./paced-clock.ts";
export { type Services, ServicesContext, useServices } from "./services.ts";
export { useLightChoice } from "./use-light-choice.ts";
export { beatsOf, useSeconds } from "./use-seconds.ts";
export { useStoreStatus } from "./use-store-status.ts";
export { type OpenedWalk, useWalkSession } from "./use-walk-session.ts";
export { WalkSession } from "./walk-session.ts";
