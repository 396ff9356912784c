import { useMemo } from "react";
import type { Marking } from "../../core/procedure/index.ts";
import type { Folded, Ledger } from "../../core/walk/index.ts";
import type { Texts } from "./use-texts.ts";
import { useTexts } from "./use-texts.ts";

/** A walk as a screen shows it. */
interface LedgerTexts {
  /** The ledger, its procedure in force with the texts that the reader wants. What was entered stands as it was entered. */
  readonly ledger: Ledger | null;
  readonly texts: Texts | null;
}

/** The ledger of a walk with the texts of its procedure in the language that its reader wants ([WRD4]); `marking` as for {@link useTexts}. */
export function useLedgerTexts(ledger: Ledger | null, marking: Marking | null = null): LedgerTexts {
  const texts = useTexts(ledger?.inForce.outline ?? null, marking);
  const inWords = useMemo(
    () =>
      !ledger || !texts || texts.outline === ledger.inForce.outline
        ? ledger
        : { ...ledger, inForce: { ...ledger.inForce, outline: texts.outline } },
    [ledger, texts],
  );
  return { ledger: inWords, texts };
}

/** A folded log whose ledger is as {@link useLedgerTexts} gives it. */
export function useFoldedTexts(
  folded: Folded,
  marking: Marking | null = null,
): { readonly folded: Folded; readonly texts: Texts | null } {
  const { ledger, texts } = useLedgerTexts(folded.ledger, marking);
  const inWords = useMemo(
    () => (ledger === folded.ledger ? folded : { ...folded, ledger }),
    [ledger, folded],
  );
  return { folded: inWords, texts };
}
