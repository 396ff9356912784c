/** As much of a window as tells whether there is a network. */
export interface NetworkParts {
  readonly navigator: Pick<Navigator, "onLine">;
  addEventListener(type: "online" | "offline", listener: () => void): void;
  removeEventListener(type: "online" | "offline", listener: () => void): void;
}

/** False when the device surely has no network; true says only that there may be one. */
export function mayBeOnline({ navigator: { onLine } }: Pick<NetworkParts, "navigator"> = window): boolean {
  return onLine;
}

/** Calls back after each change of {@link mayBeOnline}; returns a function that ends it. */
export function watchNetwork(onChange: () => void, parts: NetworkParts = window): () => void {
  const listener = () => onChange();
  parts.addEventListener("online", listener);
  parts.addEventListener("offline", listener);
  return () => {
    parts.removeEventListener("online", listener);
    parts.removeEventListener("offline", listener);
  };
}
