import { useEffect, useState } from "react";
import type { DeviceStore } from "../../io/store/index.ts";
import { useServices } from "../session/index.ts";
import { bundledProcedures } from "./bundled-procedures.ts";

/** The revisions in which a procedure is on the shelf, those that came with the app included. */
export async function revisionsOf(store: DeviceStore, id: string): Promise<ReadonlySet<string>> {
  const kept = await store.shelf.procedures();
  return new Set(
    [
      ...kept.filter((one) => one.id === id).map(({ revision }) => revision),
      ...bundledProcedures.filter((one) => one.id === id).map(({ facts }) => facts.procedure?.revision),
    ].flatMap((revision) => revision ?? []),
  );
}

const NONE: ReadonlySet<string> = new Set();

/** The revisions in which a procedure is on the shelf, kept up to date; empty until they were looked up. */
export function useRevisions(id: string | null): ReadonlySet<string> {
  const { store } = useServices();
  const [taken, setTaken] = useState(NONE);
  useEffect(() => {
    if (id === null) return;
    let isOver = false;
    // Where the shelf cannot be read nothing can be saved on it either, which saving says.
    const lookUp = () =>
      void revisionsOf(store, id).then(
        (found) => {
          if (!isOver) setTaken(found);
        },
        () => {},
      );
    const end = store.shelf.watchProcedures(lookUp);
    lookUp();
    return () => {
      isOver = true;
      end();
    };
  }, [store, id]);
  return taken;
}
