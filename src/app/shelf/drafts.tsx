import { lazy, Suspense } from "react";

// What is being written is listed once the shelf is there: the first load has no need of it.
const DraftList = lazy(async () => ({ default: (await import("./draft-list.tsx")).DraftList }));

/** The manuscripts of this device, once they are loaded. */
export function Drafts({ onWrite }: { readonly onWrite: (key: string) => void }) {
  return (
    <Suspense>
      <DraftList onWrite={onWrite} />
    </Suspense>
  );
}
