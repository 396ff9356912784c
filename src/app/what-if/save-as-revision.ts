import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { DeviceStore, KeptProcedure } from "../../io/store/index.ts";
import { revisionsOf } from "../shelf/index.ts";
import { freeRevision } from "./trial.ts";

/** Puts a changed procedure on the shelf as the next revision that is free there; `null` where the shelf does not take it. */
export async function saveAsRevision(
  store: DeviceStore,
  changed: ProcedureFile,
): Promise<KeptProcedure | null> {
  // Another tab may have taken the letter since it was shown.
  const free = freeRevision(changed.revision, await revisionsOf(store, changed.id));
  const text = `${JSON.stringify({ ...changed, revision: free }, null, 2)}\n`;
  const added = await store.shelf.addProcedure(text);
  return added.kind === "added" || added.kind === "known" ? added.procedure : null;
}
