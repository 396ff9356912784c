import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useEffect, useMemo, useState } from "react";
import type { GivenFile } from "../../io/browser-files/index.ts";
import { pickFiles, readTransfer } from "../../io/browser-files/index.ts";
import { words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import { useServices } from "../session/index.ts";
import {
  Drafts,
  type ShelfActions,
  ShelfView,
  type TakenOff,
  takenIn,
  useShelf,
  useStorageWords,
} from "../shelf/index.ts";

/** What is done with walks and procedures, loaded only when something of it is asked for. */
const deeds = () => import("./shelf-deeds.ts");

/** The page with the shelf of this device. */
export function ShelfPage() {
  const services = useServices();
  const { store, now } = services;
  const shelf = useShelf();
  const storage = useStorageWords();
  const router = useIonRouter();
  const [message, setMessage] = useState<readonly string[]>([]);
  const [takenOff, setTakenOff] = useState<TakenOff | null>(null);
  const actions = useMemo((): ShelfActions => {
    const open = async (key: string, mode: "live" | "rehearsal") => {
      const walk = await (await deeds()).openedWalk(services, key, mode);
      if (walk !== null) router.push(`/follow/${walk}`);
    };
    const told = (work: Promise<unknown>) => {
      work.catch((error: unknown) => setMessage([words("parts/did-not-work", { why: errorWords(error) })]));
    };
    const show = (path: string) => router.push(path);
    const take = async (given: Promise<readonly GivenFile[]>) =>
      setMessage(await takenIn(store, given, show));
    return {
      follow: ({ key }, mode) => told(open(key, mode)),
      write: (procedure) => router.push(procedure ? `/write/${procedure.key}` : "/write"),
      read: ({ key }) => router.push(`/read/${key}`),
      compare: ({ key }) => router.push(`/compare?after=${key}`),
      removeProcedure: ({ key, title }) => {
        const takeOff = async () => {
          const taken = await (await deeds()).takeOff(store, key, title);
          setMessage([]);
          setTakenOff(taken);
        };
        told(takeOff());
      },
      putBack: (procedure) => {
        const putBack = async () => {
          const { isBack, said } = await (await deeds()).putBack(store, procedure);
          if (isBack) setTakenOff(null);
          setMessage([said]);
        };
        told(putBack());
      },
      goOn: ({ walk }) => router.push(`/follow/${walk}`),
      review: ({ walk }) => router.push(`/review/${walk}`),
      exportWalk: ({ walk }) => told(deeds().then(({ saveLog }) => saveLog(store, walk))),
      removeWalk: ({ walk }) => told(deeds().then(({ removeWalk }) => removeWalk(services, walk))),
      join: () => router.push("/join"),
      pick: () =>
        told(
          pickFiles().then(async (files) => {
            if (files.length > 0) setMessage(await takenIn(store, files, show));
          }),
        ),
      drop: (transfer) => told(take(readTransfer(transfer))),
      backUp: () => told(deeds().then(({ saveAll }) => saveAll(store, now()))),
    };
  }, [services, store, now, router]);
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
