import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { backupFileName, exportWalk, walkFileName, writeBackup } from "../../io/backup/index.ts";
import { saveFile } from "../../io/browser-files/index.ts";
import { newWalkId } from "../../io/device/index.ts";
import type { DeviceStore } from "../../io/store/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import { contactSites, isLightOff, lightChoice, type Services, withSites } from "../session/index.ts";
import { bundledLight, procedureText, type TakenOff } from "../shelf/index.ts";

// What the shelf does is loaded when the first of it is asked for: the shelf itself is drawn without it.

const LOG_TYPE = "application/jsonl";

/** Opens a walk with a procedure of the shelf, and the orbit that comes with it; `null` when the procedure is there no more. */
export async function openedWalk(
  { store, now }: Pick<Services, "store" | "now">,
  key: string,
  mode: "live" | "rehearsal",
): Promise<WalkId | null> {
  const text = await procedureText(store, key);
  if (text === null) return null;
  const file = JSON.parse(text) as ProcedureFile;
  const at = now();
  const walk = newWalkId(at);
  const bundled = isLightOff(file.id) ? null : await bundledLight(file.id).catch(() => null);
  const light = withSites(lightChoice.current() ?? bundled?.light ?? null, contactSites.current());
  await store.log.append(walk, [
    {
      name: "walk.opened",
      data: { procedure: file, mode, ...(light ? { light } : {}) },
      at,
      actor: "follower",
    },
  ]);
  return walk;
}

/** Takes a procedure off the shelf; returns it as it was, or `null` when it was there no more. */
export async function takeOff(store: DeviceStore, key: string, title: string): Promise<TakenOff | null> {
  const kept = await store.shelf.procedure(key);
  await store.shelf.removeProcedure(key);
  return (
    kept && {
      title,
      text: kept.text,
      importedAt: kept.importedAt,
      ...(kept.saved && { saved: kept.saved }),
    }
  );
}

/** Puts a procedure back as it was taken off. Returns what came of it as a sentence, and whether it is there again. */
export async function putBack(
  store: DeviceStore,
  { text, importedAt, saved, title }: TakenOff,
): Promise<{ readonly isBack: boolean; readonly said: string }> {
  const added = await store.shelf.addProcedure(text, importedAt, saved);
  return added.kind === "not-kept"
    ? { isBack: false, said: inWords(troubleMessage(added.reason)) }
    : { isBack: true, said: words("shelf/put-back", { title }) };
}

/** Saves the log of a walk as a file. */
export async function saveLog(store: DeviceStore, walk: WalkId): ReturnType<typeof saveFile> {
  return saveFile(walkFileName(walk), await exportWalk(store.log, walk), LOG_TYPE);
}

/** Saves everything on this device as a file. */
export async function saveAll(store: DeviceStore, now: Instant): Promise<void> {
  await saveFile(backupFileName(now), await writeBackup(store, now), LOG_TYPE);
}

/** Saves the log of a walk, and removes the walk from this device. Nothing is removed before the reader has saved it. */
export async function removeWalk({ store, links }: Services, walk: WalkId): Promise<void> {
  if ((await saveLog(store, walk)) === "cancelled") return;
  if (links.status(walk).kind !== "alone") await links.leave(walk);
  await store.log.removeWalk(walk);
}
