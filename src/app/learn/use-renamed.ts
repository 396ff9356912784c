import { useMemo, useSyncExternalStore } from "react";
import { StoredChoice } from "../session/index.ts";
import type { Renamed } from "./walks-request.ts";

const NONE: Renamed = {};

/** What an author said of renamed steps of a procedure, kept on this device, and how to say something else. */
export function useRenamed(procedure: string): readonly [Renamed, (renamed: Renamed) => void] {
  const choice = useMemo(
    () => new StoredChoice<Renamed>(`tetherline.renamed.${procedure}`, NONE),
    [procedure],
  );
  const renamed = useSyncExternalStore(choice.watch, choice.current);
  return [renamed, (next) => choice.choose(Object.keys(next).length === 0 ? NONE : next)];
}
