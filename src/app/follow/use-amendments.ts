import { useMemo, useSyncExternalStore } from "react";
import type { Amendment, Folded, IdleAmendment, Ledger } from "../../core/walk/index.ts";
import { idleAmendmentsOf, newerEntriesOf } from "../../core/walk/index.ts";
import { amendmentKey, amendmentsSeenHere, rememberSeen, unseenAmendments } from "../amend/index.ts";
import type { FollowActions } from "./follow-actions.ts";

/** What a device has to be told of amendments, and how it says that it was. */
export interface Amendments {
  /** Those that were not seen on this device, in the order of the log. */
  readonly unseen: readonly Amendment[];
  /** This device's own without effect that were not put away, in the order of the log. */
  readonly idle: readonly IdleAmendment[];
  /** How many entries need a newer version of the program. */
  readonly newer: number;
  readonly onSeen: (amendment: Amendment) => void;
  readonly onPutAway: (idle: Pick<IdleAmendment, "source" | "id">) => void;
}

interface AmendmentsParts {
  readonly folded: Folded;
  readonly ledger: Ledger;
  /** The part of a source that names this device. */
  readonly device: string;
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  /** True on a device whose having seen it is entered: the lead's, and that of the crew member inside ([AMD4]). */
  readonly isAnswered: boolean;
}

/** The amendments of a walk as this device has to be told of them ([AMD4], [AMD5]). */
export function useAmendments({ folded, ledger, device, actions, isAnswered }: AmendmentsParts): Amendments {
  const seenHere = useSyncExternalStore(amendmentsSeenHere.watch, amendmentsSeenHere.current);
  const unseen = useMemo(() => unseenAmendments(ledger, device, seenHere), [ledger, device, seenHere]);
  const idle = useMemo(
    () => idleAmendmentsOf(folded, device).filter((one) => !seenHere.includes(amendmentKey(one))),
    [folded, device, seenHere],
  );
  const newer = useMemo(() => newerEntriesOf(folded).length, [folded]);
  return {
    unseen,
    idle,
    newer,
    onSeen: (amendment) => {
      if (actions && isAnswered) void actions.seeAmendment(amendment);
      rememberSeen(amendment);
    },
    onPutAway: rememberSeen,
  };
}
