import { use, useEffect, useMemo } from "react";
import type { GivenFile } from "../../io/browser-files/index.ts";
import { pickFiles, readTransfer } from "../../io/browser-files/index.ts";
import { words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import { type Services, ServicesContext, useShowPage } from "../session/index.ts";
import {
  Drafts,
  type ShelfActions,
  ShelfView,
  StorageWords,
  takenIn,
  useShelf,
  useShelfNews,
} from "../shelf/index.ts";

/** What is done with walks and procedures, loaded only when something of it is asked for. */
const deeds = () => import("./shelf-deeds.ts");

interface ShelfPageProps {
  readonly services: () => Promise<Services>;
  /** Told once walks and procedures are listed; a stable function. */
  readonly onListed?: () => void;
}

/**
 * The shelf of this device. It is drawn before the services are there; what is asked for until then is done once they
 * are.
 */
export function ShelfPage({ services, onListed }: ShelfPageProps) {
  const opened = use(ServicesContext);
  const shelf = useShelf(opened?.store ?? null);
  const isListed = shelf.walks !== null && shelf.procedures !== null;
  useEffect(() => {
    if (isListed) onListed?.();
  }, [isListed, onListed]);
  const show = useShowPage();
  const [{ message, takenOff }, setNews] = useShelfNews();
  const actions = useMemo((): ShelfActions => {
    const say = (said: readonly string[]) => setNews((news) => ({ ...news, message: said }));
    const told = (work: (ready: Services) => Promise<unknown>) => {
      services()
        .then(work)
        .catch((error: unknown) => say([words("parts/did-not-work", { why: errorWords(error) })]));
    };
    const take = (given: Promise<readonly GivenFile[]>) =>
      told(async ({ store }) => say(await takenIn(store, given, show)));
    return {
      follow: ({ key }, mode) =>
        told(async (ready) => {
          const walk = await (await deeds()).openedWalk(ready, key, mode);
          if (walk !== null) show(`/follow/${walk}`);
        }),
      write: (procedure) => show(procedure ? `/write/${procedure.key}` : "/write"),
      read: ({ key }) => show(`/read/${key}`),
      compare: ({ key }) => show(`/compare?after=${key}`),
      removeProcedure: ({ key, title }) =>
        told(async ({ store }) => {
          const taken = await (await deeds()).takeOff(store, key, title);
          setNews(() => ({ message: [], takenOff: taken }));
        }),
      putBack: (procedure) =>
        told(async ({ store }) => {
          const { isBack, said } = await (await deeds()).putBack(store, procedure);
          setNews((news) => ({ message: [said], takenOff: isBack ? null : news.takenOff }));
        }),
      goOn: ({ walk }) => show(`/follow/${walk}`),
      review: ({ walk }) => show(`/review/${walk}`),
      exportWalk: ({ walk }) => told(async ({ store }) => (await deeds()).saveLog(store, walk)),
      removeWalk: ({ walk }) => told(async (ready) => (await deeds()).removeWalk(ready, walk)),
      join: () => show("/join"),
      pick: () => {
        // A browser opens the dialog for files only while it takes the tap.
        const picked = pickFiles();
        told(async ({ store }) => {
          const files = await picked;
          if (files.length > 0) say(await takenIn(store, files, show));
        });
      },
      drop: (transfer) => take(readTransfer(transfer)),
      backUp: () => told(async ({ store, now }) => (await deeds()).saveAll(store, now())),
    };
  }, [services, show, setNews]);
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const isTyping = event.target instanceof HTMLElement && event.target.matches("input, textarea, select");
      if (!isTyping && event.clipboardData && window.location.pathname === "/")
        actions.drop(event.clipboardData);
    };
    document.addEventListener("paste", paste);
    return () => document.removeEventListener("paste", paste);
  }, [actions]);
  return (
    <ShelfView
      shelf={shelf}
      now={opened?.now() ?? null}
      actions={actions}
      message={message}
      takenOff={takenOff}
      storage={opened && <StorageWords />}
      drafts={opened && <Drafts onWrite={(key) => show(`/write/${key}`)} />}
    />
  );
}
