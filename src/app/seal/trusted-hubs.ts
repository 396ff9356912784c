import { useMemo, useSyncExternalStore } from "react";
import { isSealKey } from "../../core/seal/index.ts";
import { StoredChoice } from "../session/index.ts";

const NONE: readonly string[] = [];

/** The keys of hubs that whoever uses this device trusts. */
const trusted = new StoredChoice<readonly string[]>("tetherline.trusted-hubs", NONE);

/** The keys of hubs that are trusted on this device, and how that is changed. */
export interface TrustedHubs {
  readonly keys: readonly string[];
  readonly trust: (key: string) => void;
  readonly forget: (key: string) => void;
}

/** The trusted keys, in the order in which they were given; what is no key is left out. */
export function useTrustedHubs(): TrustedHubs {
  const stored = useSyncExternalStore(trusted.watch, trusted.current);
  const keys = useMemo(
    () => (Array.isArray(stored) ? stored.filter((key) => typeof key === "string" && isSealKey(key)) : NONE),
    [stored],
  );
  return {
    keys,
    trust: (key) => {
      if (!keys.includes(key)) trusted.choose([...keys, key]);
    },
    forget: (key) => {
      const rest = keys.filter((one) => one !== key);
      trusted.choose(rest.length === 0 ? NONE : rest);
    },
  };
}
