import { useEffect, useState } from "react";
import type { StorageSpace } from "../../io/device/index.ts";
import { askToPersist } from "../../io/device/index.ts";
import { useStoreStatus } from "../session/index.ts";

const mebibytes = (bytes: number) => `${Math.round(bytes / 1024 / 1024).toLocaleString("en")} MiB`;

/** How this device keeps what is entered, in sentences; asks the browser once to keep it for good. */
export function useStorageWords(): readonly string[] {
  const status = useStoreStatus();
  const [space, setSpace] = useState<StorageSpace | null>(null);
  useEffect(() => {
    let isOver = false;
    void askToPersist().then((answer) => {
      if (!isOver) setSpace(answer);
    });
    return () => {
      isOver = true;
    };
  }, []);
  if (status.kind === "memory") return [status.sentence];
  if (!space) return [];
  const { persisted, usage, quota } = space;
  const keeping =
    persisted === true
      ? "This device has promised to keep what is entered here."
      : persisted === false
        ? "This browser may clear what is entered here when it runs short of space: export what matters."
        : "This browser does not say how well it keeps what is entered here: export what matters.";
  const room =
    usage !== null && quota !== null
      ? [`${mebibytes(usage)} used, about ${mebibytes(quota - usage)} left.`]
      : [];
  return [keeping, ...room];
}
