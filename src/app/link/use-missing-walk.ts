import { useEffect, useState } from "react";
import type { WalkId } from "../../core/units/index.ts";
import type { Recovery } from "../../io/link/index.ts";
import { inWords, words } from "../../words/index.ts";
import { useServices } from "../session/index.ts";
import { useLink } from "./use-link.ts";

/** A walk as a screen has opened it. */
export interface SoughtWalk {
  readonly walk: WalkId;
  /** Whether its log has been read here once. */
  readonly isRead: boolean;
  /** Why it could not be read; `null` when it was. */
  readonly problem: string | null;
  /** Whether there is anything of it to show. */
  readonly isThere: boolean;
}

/** What a screen says in place of a walk. */
export interface MissingWalk {
  readonly said: string;
  /** Whether joining it with a code may help. */
  readonly mayJoin: boolean;
}

/** How soon a hub that did not answer is asked again, in ms. */
const ASKED_AGAIN = 10_000;

/** Looks for a walk that this device has not got at the hub, which may have it from before the store here was cleared, and says how that goes. */
export function useMissingWalk({ walk, isRead, problem, isThere }: SoughtWalk): MissingWalk {
  const { links } = useServices();
  const { kind, fetching, words: said } = useLink(walk);
  const [found, setFound] = useState<Recovery | null>(null);
  const isSought = isRead && problem === null && !isThere && kind === "alone";
  useEffect(() => {
    if (!isSought) return;
    let isOver = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const ask = async (): Promise<void> => {
      const outcome = await links.recover(walk);
      if (isOver) return;
      setFound(outcome);
      if (outcome === "unreachable") timer = setTimeout(() => void ask(), ASKED_AGAIN);
    };
    void ask();
    return () => {
      isOver = true;
      clearTimeout(timer);
    };
  }, [links, walk, isSought]);
  if (!isRead) return { said: words("parts/opening-walk"), mayJoin: false };
  if (problem !== null) return { said: problem, mayJoin: false };
  if (kind === "linking" || kind === "linked") {
    const so = fetching ? words("link/fetching-of", { ...fetching }) : words("link/fetching");
    return { said: so, mayJoin: false };
  }
  if (said !== null) return { said: inWords(said), mayJoin: true };
  switch (found) {
    case null:
      return { said: words("link/asking-for-walk"), mayJoin: false };
    case "unreachable":
      return { said: words("link/no-walk-no-hub"), mayJoin: false };
    case "not-a-member":
      return { said: words("link/no-walk-no-member"), mayJoin: true };
    case "other-device":
      return { said: words("link/no-walk-other-name"), mayJoin: true };
    case "back":
      return { said: words("link/fetching"), mayJoin: false };
  }
}
