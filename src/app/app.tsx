import { IonApp, IonRouterOutlet } from "@ionic/react";
import { IonReactRouter } from "@ionic/react-router";
import { lazy, Suspense } from "react";
import { Navigate, Route } from "react-router-dom";
import { UpdateNotice } from "./update/index.ts";

// Each page is its own chunk: the first load ships the shell and the page that was asked for.
const ShelfPage = lazy(async () => ({ default: (await import("./pages/shelf-page.tsx")).ShelfPage }));

/** The whole application: one outlet, one page per address. */
export function App() {
  return (
    <IonApp>
      <IonReactRouter>
        <Suspense fallback={<p role="status">Opening…</p>}>
          <IonRouterOutlet>
            <Route path="/" element={<ShelfPage />} />
            <Route path="*" element={<Navigate to="/" replace />} />
          </IonRouterOutlet>
        </Suspense>
        <UpdateNotice />
      </IonReactRouter>
    </IonApp>
  );
}
