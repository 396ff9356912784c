import { useEffect, useState } from "react";
import type { WalkCard } from "../../io/store/index.ts";
import { words } from "../../words/index.ts";
import { useServices } from "../session/index.ts";
import { useShelfRevisions } from "../shelf/index.ts";

/** What a briefing may be shown beside, as an address names it: `plan:` and the key of a revision, or `walk:` and its id. */
export interface BesideChoice {
  readonly value: string;
  readonly name: string;
}

/** What there is of a procedure on this device to be shown beside: its revisions as planned, and its walks; without `own`. */
export function useBesideChoices(procedure: string | null, own: string): readonly BesideChoice[] {
  const { store } = useServices();
  const revisions = useShelfRevisions();
  const [walks, setWalks] = useState<readonly WalkCard[]>([]);
  useEffect(() => {
    let isOver = false;
    // Without its store a device has no walks to show.
    store.log.walks().then(
      (found) => {
        if (!isOver) setWalks(found);
      },
      () => {},
    );
    return () => {
      isOver = true;
    };
  }, [store]);
  if (procedure === null) return [];
  return [
    ...(revisions ?? []).flatMap(({ key, id, revision }) =>
      id === procedure
        ? [{ value: `plan:${key}`, name: words("brief/beside-plan", { revision: revision ?? "–" }) }]
        : [],
    ),
    ...walks.flatMap(({ walk, procedure: of, mode, openedAt }) =>
      of === procedure && mode !== null && openedAt !== null
        ? [{ value: `walk:${walk}`, name: words(`brief/beside-${mode}`, { at: openedAt }) }]
        : [],
    ),
  ].filter(({ value }) => value !== own);
}

/** What an address names, taken apart; `null` for nothing or something unknown. */
export function readBeside(
  text: string | null,
): { readonly of: "plan" | "walk"; readonly id: string } | null {
  const [, of, id] = /^(plan|walk):(.+)$/.exec(text ?? "") ?? [];
  return id === undefined || (of !== "plan" && of !== "walk") ? null : { of, id };
}
