import { IonApp, IonRouterOutlet } from "@ionic/react";
import { IonReactRouter } from "@ionic/react-router";
import { lazy, Suspense } from "react";
import { Navigate, Route } from "react-router-dom";
import { ShelfPage } from "./pages/shelf-page.tsx";
import { UpdateNotice } from "./update/index.ts";

// Every page but the shelf is its own chunk: the first load ships the shell and what is asked for.
const ReadPage = lazy(async () => ({ default: (await import("./pages/read-page.tsx")).ReadPage }));
const FollowPage = lazy(async () => ({ default: (await import("./pages/follow-page.tsx")).FollowPage }));

/** The whole application: one outlet, one page per address. */
export function App() {
  return (
    <IonApp>
      <IonReactRouter>
        <Suspense fallback={<p role="status">Opening…</p>}>
          <IonRouterOutlet>
            <Route path="/" element={<ShelfPage />} />
            <Route path="/read/:procedure" element={<ReadPage />} />
            <Route path="/follow/:walk" element={<FollowPage />} />
            <Route path="*" element={<Navigate to="/" replace />} />
          </IonRouterOutlet>
        </Suspense>
        <UpdateNotice />
      </IonReactRouter>
    </IonApp>
  );
}
