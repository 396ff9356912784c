export { storedFollower, storeFollower } from "./follower-role.ts";
export { jumpDraft } from "./jump-draft.ts";
export {
  chooseLight,
  chooseSites,
  contactSites,
  isLightOff,
  lightChoice,
  setLightOff,
  watchLightOff,
  withSites,
} from "./light-choice.ts";
export { nextFrame } from "./next-frame.ts";
export { ownClockOffset } from "./own-clock-offset.ts";
export { PacedClock } from "./paced-clock.ts";
export { playedNow, sharePlayedClock } from "./played-clocks.ts";
export { readAhead } from "./read-ahead.ts";
export { type Services, ServicesContext, useServices } from "./services.ts";
export { ShowPageContext, useShowPage } from "./show-page.ts";
export { chooseStart, printAddress, startInQuery, useStartChoice } from "./start-choice.ts";
export { StoredChoice } from "./stored-choice.ts";
export { useClockJumps } from "./use-clock-jumps.ts";
export { beatsOf, useSeconds } from "./use-seconds.ts";
export { useStoreStatus } from "./use-store-status.ts";
export { type OpenedWalk, useWalkSession } from "./use-walk-session.ts";
export { WalkSession } from "./walk-session.ts";
