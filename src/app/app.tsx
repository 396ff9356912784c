import { lazy, Suspense, startTransition, useCallback, useEffect, useState } from "react";
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

/** How long the first screen has the device to itself before the frame of the other pages is loaded behind it, in ms. */
const FIRST_SCREEN = 1000;

/** Begins to load what the page of a path is drawn with, unless it is the shelf, which draws itself first. */
export function startPage(path: string, services: () => Promise<Services>): void {
  if (path === SHELF) return;
  // What cannot be loaded is told of once it is to be drawn.
  services().catch(() => {});
  loadFrame().then(
    ({ laterPages }) => laterPages(),
    () => {},
  );
}

/** Loads the frame, and the page of a walk where one is open: the next tap asks for it. */
async function loadBehind(): Promise<void> {
  const { laterPages } = await loadFrame();
  if (lastWalks().some(({ phase }) => phase !== "closed")) await (await laterPages()).laterPage("follow");
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
    const timer = setTimeout(() => loadBehind().catch(() => {}), FIRST_SCREEN);
    return () => {
      window.removeEventListener("popstate", goBack);
      clearTimeout(timer);
    };
  }, [isFramed, goOver]);
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
