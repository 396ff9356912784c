import { IonApp, IonRouterOutlet } from "@ionic/react";
import { IonReactRouter } from "@ionic/react-router";
import { lazy, Suspense } from "react";
import { Navigate, Route } from "react-router-dom";
import { words } from "../words/index.ts";
import { ShelfPage } from "./pages/index.ts";
import { Updates } from "./update/index.ts";

// The first load contains the shell and the shelf, which is drawn at once. Where the other pages are is known to a chunk of its own,
// since the list of what each of them needs would be in the first load otherwise.
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

const laterPages = () => import("./pages/later-pages.ts");
type PageName = Parameters<Awaited<ReturnType<typeof laterPages>>["laterPage"]>[0];

/** Begins to load where the pages other than the shelf are, if it is one of them that a path asks for. */
export function startPage(path: string): void {
  // What cannot be loaded is told of once it is to be drawn.
  if (path !== "/") laterPages().catch(() => {});
}

/** A page that is drawn once it and all words are loaded. */
function fromLater<Name extends PageName>(name: Name) {
  return lazy(async () => ({ default: await (await laterPages()).laterPage(name) }));
}

const PRINTED =
  /^\/(print|cards|poster|(?:storyboard|audience)(?:-walk)?|print-walk|print-paper|print-compare|handover)\/([^/]+)\/?$/;

/** The whole application: one outlet and one page for each address. A printable page is outside the outlet. */
export function App() {
  const [, kind, name] = PRINTED.exec(window.location.pathname) ?? [];
  if (name !== undefined) {
    const id = decodeURIComponent(name);
    return (
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
    );
  }
  return (
    <IonApp>
      <IonReactRouter>
        <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
          <IonRouterOutlet>
            <Route path="/" element={<ShelfPage />} />
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
        </Suspense>
        <Updates />
      </IonReactRouter>
    </IonApp>
  );
}
