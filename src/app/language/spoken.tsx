import type { ReactNode } from "react";
import { Fragment, useSyncExternalStore } from "react";
import { spokenTag, watchLanguage } from "./spoken-language.ts";

/** Draws what it holds anew when another language is chosen, so that no word of the one before is left. */
export function Spoken({ children }: { readonly children: ReactNode }) {
  const tag = useSyncExternalStore(watchLanguage, spokenTag);
  return <Fragment key={tag}>{children}</Fragment>;
}
