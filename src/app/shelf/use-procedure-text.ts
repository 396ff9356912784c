import { useEffect, useState } from "react";
import { useServices } from "../session/index.ts";
import { bundledProcedures } from "./bundled-procedures.ts";
import { procedureText } from "./procedure-text.ts";

/** A procedure on the shelf, as a page loads it. */
export interface ProcedureOnShelf {
  /** The procedure's own id; `null` until the shelf was read, and when there is none. */
  readonly id: string | null;
  /** Its text; `null` until it has been loaded, and when there is none. */
  readonly text: string | null;
  /** True once the shelf was read. */
  readonly isRead: boolean;
}

interface Found {
  readonly key: string;
  readonly id: string | null;
  readonly text: string | null;
}

/** The text of a procedure on the shelf, by its key there, and the procedure's id. */
export function useProcedureText(key: string): ProcedureOnShelf {
  const { store } = useServices();
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => {
    let isOver = false;
    const take = (id: string | null, text: string | null) => {
      if (!isOver) setFound({ key, id, text });
    };
    const load = async () => {
      const kept = await store.shelf.procedures();
      const id = [...kept, ...bundledProcedures].find((one) => one.key === key)?.id ?? null;
      take(id, await procedureText(store, key));
    };
    load().catch(() => take(null, null));
    return () => {
      isOver = true;
    };
  }, [store, key]);
  return found?.key === key
    ? { id: found.id, text: found.text, isRead: true }
    : { id: null, text: null, isRead: false };
}
