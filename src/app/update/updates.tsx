import { useEffect, useState } from "react";
import { UpdateNotice } from "./update-notice.tsx";

/** How long the first screen has the device to itself, in ms. */
const FIRST_SCREEN = 1000;

/** Stores the app on the device and offers later versions, once the first screen had time to be drawn: storing takes as much of a slow device as drawing does. `path` is that of the page that is shown. */
export function Updates({ path }: { readonly path: string }) {
  const [isDue, setIsDue] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setIsDue(true), FIRST_SCREEN);
    return () => clearTimeout(timer);
  }, []);
  return isDue ? <UpdateNotice path={path} /> : null;
}
