import { useSyncExternalStore } from "react";
import type { StoreStatus } from "../../io/store/index.ts";
import { useServices } from "./services.ts";

/** Whether entries are stored on disk at present. The component is drawn again when that changes. */
export function useStoreStatus(): StoreStatus {
  const { log } = useServices().store;
  return useSyncExternalStore(log.watchStatus, log.status);
}
