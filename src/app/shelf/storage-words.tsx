import { useEffect, useState } from "react";
import type { StorageSpace } from "../../io/device/index.ts";
import { askToPersist } from "../../io/device/index.ts";
import { inWords, words } from "../../words/index.ts";
import { useStoreStatus } from "../session/index.ts";

/** How this device keeps what is entered. Asks the browser once for persistent storage. */
export function StorageWords() {
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
  if (status.kind === "memory") return <p>{inWords(status.message)}</p>;
  if (!space) return null;
  const { persisted, usage, quota } = space;
  const keeping =
    persisted === true
      ? words("shelf/keeps")
      : persisted === false
        ? words("shelf/may-clear")
        : words("shelf/does-not-say");
  return (
    <>
      <p>{keeping}</p>
      {usage !== null && quota !== null && <p>{words("shelf/room", { used: usage, left: quota - usage })}</p>}
    </>
  );
}
