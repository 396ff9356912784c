import { IonApp, IonRouterOutlet } from "@ionic/react";
import { IonReactRouter } from "@ionic/react-router";
import { lazy, Suspense } from "react";
import { Navigate, Route } from "react-router-dom";
import { words } from "../words/index.ts";
import { UpdateNotice } from "./update/index.ts";

// Each page is its own chunk: the first load ships the shell and the page that was asked for.
const ShelfPage = lazy(async () => ({ default: (await import("./pages/shelf-page.tsx")).ShelfPage }));
const ReadPage = lazy(async () => ({ default: (await import("./pages/read-page.tsx")).ReadPage }));
const PlanPage = lazy(async () => ({ default: (await import("./pages/plan-page.tsx")).PlanPage }));
const PrintPage = lazy(async () => ({ default: (await import("./pages/print-page.tsx")).PrintPage }));
const FollowPage = lazy(async () => ({ default: (await import("./pages/follow-page.tsx")).FollowPage }));
const JoinPage = lazy(async () => ({ default: (await import("./pages/join-page.tsx")).JoinPage }));
const TimelinePage = lazy(async () => ({
  default: (await import("./pages/timeline-page.tsx")).TimelinePage,
}));
const ReviewPage = lazy(async () => ({ default: (await import("./pages/review-page.tsx")).ReviewPage }));
const PrintReviewPage = lazy(async () => ({
  default: (await import("./pages/print-review-page.tsx")).PrintReviewPage,
}));

const PRINTED = /^\/print(-walk)?\/([^/]+)\/?$/;

/** The whole application: one outlet, one page per address; a printable page stands alone. */
export function App() {
  const [, ofWalk, name] = PRINTED.exec(window.location.pathname) ?? [];
  if (name !== undefined) {
    const id = decodeURIComponent(name);
    return (
      <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
        {ofWalk ? <PrintReviewPage walk={id} /> : <PrintPage procedure={id} />}
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
