import { IonApp, IonRouterOutlet } from "@ionic/react";
import { IonReactRouter } from "@ionic/react-router";
import type { ComponentType } from "react";
import { lazy, Suspense } from "react";
import { Navigate, Route } from "react-router-dom";
import { words } from "../words/index.ts";
import { wholeLanguage } from "./language/index.ts";
import { UpdateNotice } from "./update/index.ts";

// Each page is its own chunk: the first load contains the shell and the requested page. Every page but the shelf needs
// words that are not in the first load, so these are loaded with the page.
const ShelfPage = lazy(async () => ({ default: (await import("./pages/shelf-page.tsx")).ShelfPage }));
const ReadPage = worded(async () => (await import("./pages/read-page.tsx")).ReadPage);
const PlanPage = worded(async () => (await import("./pages/plan-page.tsx")).PlanPage);
const PrintPage = worded(async () => (await import("./pages/print-page.tsx")).PrintPage);
const FollowPage = worded(async () => (await import("./pages/follow-page.tsx")).FollowPage);
const JoinPage = worded(async () => (await import("./pages/join-page.tsx")).JoinPage);
const TimelinePage = worded(async () => (await import("./pages/timeline-page.tsx")).TimelinePage);
const ReviewPage = worded(async () => (await import("./pages/review-page.tsx")).ReviewPage);
const HandoverPage = worded(async () => (await import("./pages/handover-page.tsx")).HandoverPage);
const PrintPaperPage = worded(async () => (await import("./pages/print-paper-page.tsx")).PrintPaperPage);
const PrintReviewPage = worded(async () => (await import("./pages/print-review-page.tsx")).PrintReviewPage);

/** A page in its own chunk that is drawn once all words are loaded. */
function worded<Props>(page: () => Promise<ComponentType<Props>>) {
  return lazy(async () => {
    const [loaded] = await Promise.all([page(), wholeLanguage()]);
    return { default: loaded };
  });
}

const PRINTED = /^\/(print|print-walk|print-paper|handover)\/([^/]+)\/?$/;

/** The whole application: one outlet and one page for each address. A printable page is outside the outlet. */
export function App() {
  const [, kind, name] = PRINTED.exec(window.location.pathname) ?? [];
  if (name !== undefined) {
    const id = decodeURIComponent(name);
    return (
      <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
        {kind === "print" && <PrintPage procedure={id} />}
        {kind === "print-walk" && <PrintReviewPage walk={id} />}
        {kind === "print-paper" && <PrintPaperPage walk={id} />}
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
            <Route path="/plan/:procedure" element={<PlanPage />} />
            <Route path="/follow/:walk" element={<FollowPage />} />
            <Route path="/timeline/:walk" element={<TimelinePage />} />
            <Route path="/review/:walk" element={<ReviewPage />} />
            <Route path="/join" element={<JoinPage />} />
            <Route path="/join/:code" element={<JoinPage />} />
            <Route path="*" element={<Navigate to="/" replace />} />
          </IonRouterOutlet>
        </Suspense>
        <UpdateNotice />
      </IonReactRouter>
    </IonApp>
  );
}
