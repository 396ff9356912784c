import { useEffect, useState } from "react";
import type { FoldedRemarks, Remark } from "../../core/remarks/index.ts";
import { foldRemarks } from "../../core/remarks/index.ts";
import { textDigest } from "../../io/device/index.ts";
import { useServices } from "../session/index.ts";

/** The remarks about a procedure on this device, as they stand for the text at hand. */
export interface RemarksHere {
  readonly all: readonly Remark[];
  readonly folded: FoldedRemarks;
  /** The digest of the text at hand; `null` where this page can make none, so that nobody can agree. */
  readonly digest: string | null;
}

/** The remarks about a procedure, kept up to date; `null` until they were read. */
export function useRemarks(procedure: string | null, text: string | null): RemarksHere | null {
  const { store } = useServices();
  const [read, setRead] = useState<{ readonly of: string | null; readonly here: RemarksHere } | null>(null);
  useEffect(() => {
    if (procedure === null || text === null) return;
    let isOver = false;
    const lookUp = async () => {
      const [all, digest] = await Promise.all([store.remarks.remarks(procedure), textDigest(text)]);
      if (!isOver) setRead({ of: text, here: { all, digest, folded: foldRemarks(all, procedure, digest) } });
    };
    // Where they cannot be read the page is as without any; adding one says what is wrong.
    const look = () => void lookUp().catch(() => {});
    const end = store.remarks.watchRemarks(look);
    look();
    return () => {
      isOver = true;
      end();
    };
  }, [store, procedure, text]);
  return read?.of === text ? read.here : null;
}
