import type { ReactNode } from "react";
import { Fragment, useSyncExternalStore } from "react";
import { retelling } from "./retelling.ts";
import { spokenTag } from "./spoken-language.ts";
import { unitsInForce } from "./units-in-force.ts";
import { utcInForce } from "./utc-in-force.ts";

const told = () => `${spokenTag()} ${unitsInForce()} ${utcInForce()}`;

/** Draws what it holds anew when it is told otherwise, in another language, other units or another style of UTC, so that nothing is left of the way before. */
export function Spoken({ children }: { readonly children: ReactNode }) {
  const key = useSyncExternalStore(retelling.add, told);
  return <Fragment key={key}>{children}</Fragment>;
}
