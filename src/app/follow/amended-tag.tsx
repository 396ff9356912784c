import type { AmendedHow } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";

/** What an amendment that was not seen here does to a step. */
export function AmendedTag({ how }: { readonly how: AmendedHow }) {
  return <span className="follow-tag amended-tag">{words(`amending/row-${how}`)}</span>;
}
