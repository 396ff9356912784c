import "./no-eval.ts";
import { IonApp, IonContent, IonPage, IonRouterOutlet, setupIonicReact, useIonRouter } from "@ionic/react";
import { IonReactRouter } from "@ionic/react-router";
import { lazy, memo, type ReactNode, Suspense, use, useCallback, useEffect, useRef } from "react";
import { Navigate, Route, useLocation } from "react-router-dom";
import { words } from "../words/index.ts";
import { ShelfPage } from "./pages/index.ts";
import { printedAt } from "./printed-at.ts";
import { type Services, ServicesContext, ShowPageContext } from "./session/index.ts";
import { takeShelfPlace } from "./shelf/index.ts";

setupIonicReact({ mode: "md", rippleEffect: false, animated: false });

// Where the pages are is known to a chunk of its own, since the list of what each of them needs would be loaded with the frame otherwise.
const WritePage = fromLater("write");
const ReadPage = fromLater("read");
const PlanPage = fromLater("plan");
const PrintPage = fromLater("print");
const FollowPage = fromLater("follow");
const JoinPage = fromLater("join");
const TimelinePage = fromLater("timeline");
const TrainPage = fromLater("train");
const ReviewPage = fromLater("review");
const LearnPage = fromLater("learn");
const MarksPage = fromLater("marks");
const WalksPage = fromLater("walks");
const ComparePage = fromLater("compare");
const ExtractPage = fromLater("extract");
const LibraryPage = fromLater("library");
const PrintComparePage = fromLater("print-compare");
const BriefPage = fromLater("brief");
const BriefSheetPage = fromLater("brief-sheet");
const HandoverPage = fromLater("handover");
const PrintPaperPage = fromLater("print-paper");
const PrintReviewPage = fromLater("print-walk");

/** Loads where the pages other than the shelf are. */
export const laterPages = () => import("./pages/later-pages.ts");
type PageName = Parameters<Awaited<ReturnType<typeof laterPages>>["laterPage"]>[0];

/** A page that is drawn once it and all words are loaded. */
function fromLater<Name extends PageName>(name: Name) {
  return lazy(async () => ({ default: await (await laterPages()).laterPage(name) }));
}

interface FrameProps {
  readonly services: () => Promise<Services>;
  /** Told the path of each page that is shown. */
  readonly onPath: (path: string) => void;
}

/** One outlet and one page for each address. A printable page is outside the outlet. */
export const Frame = memo(function Frame({ services, onPath }: FrameProps) {
  return (
    <ServicesContext value={use(services())}>
      <Pages services={services} onPath={onPath} />
    </ServicesContext>
  );
});

/** From a printable page another one is loaded anew. */
const loadPage = (path: string) => window.location.assign(path);

function Pages({ services, onPath }: FrameProps) {
  const printed = printedAt(window.location.pathname);
  if (printed) {
    const { kind, id } = printed;
    return (
      <ShowPageContext value={loadPage}>
        <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
          {(kind === "print" || kind === "cards" || kind === "poster") && (
            <PrintPage procedure={id} as={kind} />
          )}
          {(kind === "storyboard" ||
            kind === "storyboard-walk" ||
            kind === "audience" ||
            kind === "audience-walk") && <BriefSheetPage id={id} as={kind} />}
          {kind === "print-walk" && <PrintReviewPage walk={id} />}
          {kind === "print-paper" && <PrintPaperPage walk={id} />}
          {kind === "print-compare" && <PrintComparePage after={id} />}
          {kind === "handover" && <HandoverPage walk={id} />}
        </Suspense>
      </ShowPageContext>
    );
  }
  return (
    <IonApp>
      <IonReactRouter>
        <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
          <Shown onPath={onPath}>
            <IonRouterOutlet>
              <Route path="/" element={<FramedShelf services={services} />} />
              <Route path="/read/:procedure" element={<ReadPage />} />
              <Route path="/write" element={<WritePage />} />
              <Route path="/write/:manuscript" element={<WritePage />} />
              <Route path="/plan/:procedure" element={<PlanPage />} />
              <Route path="/follow/:walk" element={<FollowPage />} />
              <Route path="/timeline/:walk" element={<TimelinePage />} />
              <Route path="/train/:walk" element={<TrainPage />} />
              <Route path="/review/:walk" element={<ReviewPage />} />
              <Route path="/learn/:procedure" element={<LearnPage />} />
              <Route path="/walks/:procedure" element={<WalksPage />} />
              <Route path="/brief/:of/:id" element={<BriefPage />} />
              <Route path="/compare" element={<ComparePage />} />
              <Route path="/marks" element={<MarksPage />} />
              <Route path="/extract/:file" element={<ExtractPage />} />
              <Route path="/library" element={<LibraryPage />} />
              <Route path="/join" element={<JoinPage />} />
              <Route path="/join/:code" element={<JoinPage />} />
              <Route path="*" element={<Navigate to="/" replace />} />
            </IonRouterOutlet>
          </Shown>
        </Suspense>
      </IonReactRouter>
    </IonApp>
  );
}

/** The shelf as a page of the frame: where it was on the first screen, when that was left. */
function FramedShelf({ services }: Pick<FrameProps, "services">) {
  const content = useRef<HTMLIonContentElement>(null);
  const goToPlace = useCallback(() => void content.current?.scrollToPoint(0, takeShelfPlace()), []);
  return (
    <IonPage>
      <IonContent ref={content}>
        <main>
          <ShelfPage services={services} onListed={goToPlace} />
        </main>
      </IonContent>
    </IonPage>
  );
}

/** Tells which page is shown, and shows another one where a part asks for it. */
function Shown({ onPath, children }: Pick<FrameProps, "onPath"> & { readonly children: ReactNode }) {
  const { pathname } = useLocation();
  const { push } = useIonRouter();
  useEffect(() => onPath(pathname), [onPath, pathname]);
  return <ShowPageContext value={push}>{children}</ShowPageContext>;
}
