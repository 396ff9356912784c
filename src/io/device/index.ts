export { mayBeOnline, watchNetwork } from "./network-presence.ts";
export { newDeviceSource, newWalkId } from "./new-ids.ts";
export type { RandomBytes } from "./random-text.ts";
export { platformRandomBytes, randomText } from "./random-text.ts";
export type { StorageParts, StorageSpace } from "./storage-space.ts";
export { askToPersist, storageSpace } from "./storage-space.ts";
export type { WakeKeeper, WakeParts, WakeStatus } from "./wake-lock.ts";
export { keepAwake } from "./wake-lock.ts";
