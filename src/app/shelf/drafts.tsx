import { lazy, Suspense, useEffect, useState } from "react";
import { useServices } from "../session/index.ts";

// What is being written is listed once the shelf is there, where there is any: the first load has no need of it.
const DraftList = lazy(async () => ({ default: (await import("./draft-list.tsx")).DraftList }));

/** The manuscripts of this device, once they are loaded. */
export function Drafts({ onWrite }: { readonly onWrite: (key: string) => void }) {
  const { store } = useServices();
  const [isThere, setThere] = useState(false);
  useEffect(() => {
    // Where they cannot be read, nothing of them is known: the page that writes says so.
    store.hasManuscripts().then(setThere, () => {});
  }, [store]);
  return (
    isThere && (
      <Suspense>
        <DraftList onWrite={onWrite} />
      </Suspense>
    )
  );
}
