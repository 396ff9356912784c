import { useEffect, useState } from "react";
import type { KeptProcedure } from "../../io/store/index.ts";
import { useServices } from "../session/index.ts";

const NONE: readonly KeptProcedure[] = [];

/** The procedures that somebody put on this device's shelf, kept up to date; none until they were read, and where they cannot be. */
export function useKeptProcedures(): readonly KeptProcedure[] {
  const { store } = useServices();
  const [kept, setKept] = useState(NONE);
  useEffect(() => {
    let isOver = false;
    const take = (found: readonly KeptProcedure[]) => {
      if (!isOver) setKept(found);
    };
    const lookUp = () =>
      void store.shelf.procedures().then(take, () => {
        take(NONE);
      });
    const end = store.shelf.watchProcedures(lookUp);
    lookUp();
    return () => {
      isOver = true;
      end();
    };
  }, [store]);
  return kept;
}
