import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useMemo, useState } from "react";
import { writeLines } from "../../core/log/index.ts";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import { saveText } from "../../io/browser-files/index.ts";
import { newWalkId } from "../../io/device/index.ts";
import { useServices } from "../session/index.ts";
import { type ShelfActions, type ShelfMessage, ShelfView, useShelf } from "../shelf/index.ts";

/** The shelf of this device. */
export function ShelfPage() {
  const { store, now } = useServices();
  const shelf = useShelf();
  const router = useIonRouter();
  const [message, setMessage] = useState<ShelfMessage | null>(null);
  const actions = useMemo((): ShelfActions => {
    const open = async (file: ProcedureFile, mode: "live" | "rehearsal") => {
      const at = now();
      const walk = newWalkId(at);
      await store.log.append(walk, [
        { name: "walk.opened", data: { procedure: file, mode }, at, actor: "follower" },
      ]);
      router.push(`/follow/${walk}`);
    };
    const told = (work: Promise<void>) => {
      work.catch((error: unknown) =>
        setMessage({ lines: [`That did not work: ${error instanceof Error ? error.message : "unknown"}.`] }),
      );
    };
    return {
      follow: ({ file }, mode) => {
        if (file) told(open(file, mode));
      },
      read: ({ key }) => router.push(`/read/${key}`),
      removeProcedure: ({ key }) => told(store.shelf.removeProcedure(key)),
      goOn: ({ walk }) => router.push(`/follow/${walk}`),
      review: ({ walk }) => router.push(`/review/${walk}`),
      exportWalk: ({ walk }) => told(saveLog(walk)),
      removeWalk: ({ walk }) =>
        told(
          saveLog(walk).then(async () => {
            await store.log.removeWalk(walk);
          }),
        ),
      takeFiles: () => {},
      paste: () => {},
      backUp: () => {},
    };
    async function saveLog(walk: Parameters<typeof store.log.read>[0]) {
      const { entries } = await store.log.read(walk, 0);
      await saveText(`${walk}.walk.jsonl`, writeLines(entries), "application/jsonl");
    }
  }, [store, now, router]);
  return (
    <IonPage>
      <IonContent>
        <main>
          <ShelfView shelf={shelf} now={now()} actions={actions} message={message} storage={[]} />
        </main>
      </IonContent>
    </IonPage>
  );
}
