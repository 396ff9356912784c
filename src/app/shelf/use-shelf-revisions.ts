import { useEffect, useState } from "react";
import type { Instant } from "../../core/units/index.ts";
import type { DeviceStore, RevisionNote } from "../../io/store/index.ts";
import { useServices } from "../session/index.ts";
import { bundledProcedures } from "./bundled-procedures.ts";

/** A revision of a procedure on the shelf ([WRT7]). */
export interface ShelfRevision {
  /** Names it in addresses of the app. */
  readonly key: string;
  /** The procedure's own id, the same in all of its revisions. */
  readonly id: string;
  readonly title: string;
  readonly revision: string | null;
  /** When it was put on the shelf; `null` for one that came with the app. */
  readonly at: Instant | null;
  /** Who saved it here and why; `null` where it was put in from a file or came with the app. */
  readonly saved: RevisionNote | null;
}

async function shelfRevisions(store: DeviceStore): Promise<readonly ShelfRevision[]> {
  const kept = (await store.shelf.procedures()).map(
    ({ key, id, title, revision, importedAt, saved }): ShelfRevision => ({
      ...{ key, id, title, revision },
      at: importedAt,
      saved: saved ?? null,
    }),
  );
  const bundled = bundledProcedures.map(
    ({ key, id, facts }): ShelfRevision => ({
      ...{ key, id },
      title: facts.procedure?.title ?? id,
      revision: facts.procedure?.revision ?? null,
      at: null,
      saved: null,
    }),
  );
  return [...kept, ...bundled];
}

/** Every revision on the shelf, kept up to date: those of this device first, the latest first for each title; `null` until it was read. */
export function useShelfRevisions(): readonly ShelfRevision[] | null {
  const { store } = useServices();
  const [revisions, setRevisions] = useState<readonly ShelfRevision[] | null>(null);
  useEffect(() => {
    let isOver = false;
    // A shelf that cannot be read has nothing of its own: what came with the app is still there.
    const lookUp = () =>
      void shelfRevisions(store).then(
        (found) => {
          if (!isOver) setRevisions(found);
        },
        () => {
          if (!isOver) setRevisions([]);
        },
      );
    const end = store.shelf.watchProcedures(lookUp);
    lookUp();
    return () => {
      isOver = true;
      end();
    };
  }, [store]);
  return revisions;
}
