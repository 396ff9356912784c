import { createContext, use } from "react";

/** Thrown when a part that shows other pages is drawn outside the provider, which is a bug in this program. */
export class NoShowPageError extends Error {
  override readonly name = "NoShowPageError";
}

/** Passes down what shows another page of the app. */
export const ShowPageContext = createContext<((path: string) => void) | null>(null);

/** Shows the page of a path, such as `/marks`: for what is drawn on the first screen as well as in the frame of the pages. */
export function useShowPage(): (path: string) => void {
  const show = use(ShowPageContext);
  if (!show) throw new NoShowPageError("nothing above this part shows pages");
  return show;
}
