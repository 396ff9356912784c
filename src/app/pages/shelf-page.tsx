import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useEffect, useMemo, useState } from "react";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { GivenFile } from "../../io/browser-files/index.ts";
import { pickFiles, readTransfer, saveFile } from "../../io/browser-files/index.ts";
import { newWalkId } from "../../io/device/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import { contactSites, isLightOff, lightChoice, useServices, withSites } from "../session/index.ts";
import {
  bundledLight,
  Drafts,
  procedureText,
  type ShelfActions,
  ShelfView,
  type TakenOff,
  takenIn,
  useShelf,
  useStorageWords,
} from "../shelf/index.ts";

const LOG_TYPE = "application/jsonl";

/** What writes logs and backups, loaded only when one is asked for. */
const backup = () => import("../../io/backup/index.ts");

/** The page with the shelf of this device. */
export function ShelfPage() {
  const { store, links, now } = useServices();
  const shelf = useShelf();
  const storage = useStorageWords();
  const router = useIonRouter();
  const [message, setMessage] = useState<readonly string[]>([]);
  const [takenOff, setTakenOff] = useState<TakenOff | null>(null);
  const actions = useMemo((): ShelfActions => {
    const saveLog = async (walk: WalkId) => {
      const { exportWalk, walkFileName } = await backup();
      return saveFile(walkFileName(walk), await exportWalk(store.log, walk), LOG_TYPE);
    };
    const saveAll = async () => {
      const { backupFileName, writeBackup } = await backup();
      await saveFile(backupFileName(now()), await writeBackup(store, now()), LOG_TYPE);
    };
    const open = async (key: string, mode: "live" | "rehearsal") => {
      const text = await procedureText(store, key);
      if (text === null) return;
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
      router.push(`/follow/${walk}`);
    };
    const told = (work: Promise<unknown>) => {
      work.catch((error: unknown) => setMessage([words("parts/did-not-work", { why: errorWords(error) })]));
    };
    const take = async (given: Promise<readonly GivenFile[]>) => setMessage(await takenIn(store, given));
    return {
      follow: ({ key }, mode) => told(open(key, mode)),
      write: (procedure) => router.push(procedure ? `/write/${procedure.key}` : "/write"),
      read: ({ key }) => router.push(`/read/${key}`),
      compare: ({ key }) => router.push(`/compare?after=${key}`),
      removeProcedure: ({ key, title }) => {
        const takeOff = async () => {
          const kept = await store.shelf.procedure(key);
          await store.shelf.removeProcedure(key);
          setMessage([]);
          setTakenOff(
            kept && {
              title,
              text: kept.text,
              importedAt: kept.importedAt,
              ...(kept.saved && { saved: kept.saved }),
            },
          );
        };
        told(takeOff());
      },
      putBack: ({ text, importedAt, saved, title }) => {
        const putBack = async () => {
          const added = await store.shelf.addProcedure(text, importedAt, saved);
          if (added.kind === "not-kept") return setMessage([inWords(troubleMessage(added.reason))]);
          setTakenOff(null);
          setMessage([words("shelf/put-back", { title })]);
        };
        told(putBack());
      },
      goOn: ({ walk }) => router.push(`/follow/${walk}`),
      review: ({ walk }) => router.push(`/review/${walk}`),
      exportWalk: ({ walk }) => told(saveLog(walk)),
      removeWalk: ({ walk }) =>
        told(
          saveLog(walk).then(async (saved) => {
            // Nothing is removed from the device before the reader has saved it.
            if (saved === "cancelled") return;
            if (links.status(walk).kind !== "alone") await links.leave(walk);
            await store.log.removeWalk(walk);
          }),
        ),
      join: () => router.push("/join"),
      pick: () =>
        told(
          pickFiles().then(async (files) => {
            if (files.length > 0) setMessage(await takenIn(store, files));
          }),
        ),
      drop: (transfer) => told(take(readTransfer(transfer))),
      backUp: () => told(saveAll()),
    };
  }, [store, links, now, router]);
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const isTyping = event.target instanceof HTMLElement && event.target.matches("input, textarea, select");
      if (!isTyping && event.clipboardData && router.routeInfo.pathname === "/")
        actions.drop(event.clipboardData);
    };
    document.addEventListener("paste", paste);
    return () => document.removeEventListener("paste", paste);
  }, [actions, router]);
  return (
    <IonPage>
      <IonContent>
        <main>
          <ShelfView
            shelf={shelf}
            now={now()}
            actions={actions}
            message={message}
            takenOff={takenOff}
            storage={storage}
            drafts={<Drafts onWrite={(key) => router.push(`/write/${key}`)} />}
          />
        </main>
      </IonContent>
    </IonPage>
  );
}
