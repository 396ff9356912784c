import { lazy, Suspense, startTransition, useCallback, useEffect, useState } from "react";
import type { WalkId } from "../core/units/index.ts";
import { words } from "../words/index.ts";
import { FirstScreen } from "./first-screen.tsx";
import { printedAt } from "./printed-at.ts";
import type { Services } from "./session/index.ts";
import { lastWalks, NO_NEWS, ShelfNewsContext } from "./shelf/index.ts";
import { Updates } from "./update/index.ts";

// The first load draws the shelf, which needs neither the store nor the frame of the other pages to be drawn.
const loadFrame = () => import("./frame.tsx");
const Frame = lazy(async () => ({ default: (await loadFrame()).Frame }));

const SHELF = "/";

/** The path of a walk that is followed. */
const FOLLOWED = /^\/follow\/([^/]+)\/?$/;

/** How long the first screen has the device to itself before the frame of the other pages is loaded behind it, in ms. */
const FIRST_SCREEN = 1000;

/** Begins to load what the page of a path is drawn with, unless it is the shelf, which draws itself first. */
export function startPage(path: string, services: () => Promise<Services>): void {
  if (path === SHELF) return;
  const [, walk] = FOLLOWED.exec(path) ?? [];
  const page = walk ? openFollowed(services, walk) : loadFrame().then(({ laterPages }) => laterPages());
  // What cannot be loaded is told of once it is to be drawn.
  Promise.all([services(), loadFrame(), page]).catch(() => {});
}

/** Opens ahead the walk that a path names. Rejects where the path is spoiled. */
async function openFollowed(services: () => Promise<Services>, named: string): Promise<void> {
  await openAhead(services, decodeURIComponent(named) as WalkId);
}

/** Loads the page that follows a walk, and reads its log, before either is asked for. */
async function openAhead(services: () => Promise<Services>, walk: WalkId): Promise<void> {
  const { openAhead } = await import("./pages/open-ahead.ts");
  await openAhead(await services(), walk);
}

/** Loads the frame, and reads the first walk that is open, where one is: the next tap most likely asks for it. */
async function loadBehind(services: () => Promise<Services>): Promise<void> {
  await loadFrame();
  const next = lastWalks().find(({ phase }) => phase !== "closed");
  if (next) await openAhead(services, next.walk);
}

/** The whole application: the shelf at first, and the frame of all pages from the first other one on. */
export function App({ services }: { readonly services: () => Promise<Services> }) {
  const [path, setPath] = useState(window.location.pathname);
  const [isFramed, setFramed] = useState(path !== SHELF);
  const news = useState(NO_NEWS);
  /** Goes over to the frame, at the page of the address; the shelf stays until the frame is there. */
  const goOver = useCallback(() => startTransition(() => setFramed(true)), []);
  const show = useCallback(
    (to: string) => {
      window.history.pushState(null, "", to);
      setPath(window.location.pathname);
      goOver();
    },
    [goOver],
  );
  useEffect(() => {
    if (isFramed) return;
    const goBack = () => window.location.pathname !== SHELF && goOver();
    window.addEventListener("popstate", goBack);
    const timer = setTimeout(() => loadBehind(services).catch(() => {}), FIRST_SCREEN);
    return () => {
      window.removeEventListener("popstate", goBack);
      clearTimeout(timer);
    };
  }, [isFramed, goOver, services]);
  return (
    <ShelfNewsContext value={news}>
      {isFramed ? (
        <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
          <Frame services={services} onPath={setPath} />
        </Suspense>
      ) : (
        <FirstScreen services={services} onShow={show} />
      )}
      {!printedAt(path) && <Updates path={path} />}
    </ShelfNewsContext>
  );
}
