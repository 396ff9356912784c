import { useRegisterSW } from "virtual:pwa-register/react";
import { words } from "../../words/index.ts";
import "./update-notice.css";

/**
 * Offers a later version once it is stored on the device. It never loads by itself, and it says nothing while a walk is
 * being followed: the offer waits until the reader leaves that screen.
 */
export function UpdateNotice({ path }: { readonly path: string }) {
  const {
    needRefresh: [ready, setReady],
    updateServiceWorker,
  } = useRegisterSW();

  if (!ready || path.startsWith("/follow/")) return null;
  return (
    <aside className="update-notice" role="status">
      <p>{words("parts/newer-version")}</p>
      <button type="button" onClick={() => void updateServiceWorker(true)}>
        {words("parts/load-it-now")}
      </button>
      <button type="button" onClick={() => setReady(false)}>
        {words("parts/later")}
      </button>
    </aside>
  );
}
