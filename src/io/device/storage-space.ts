/** How well this device keeps what the app stores. */
export interface StorageSpace {
  /** True when the browser promised not to clear it unasked; `null` when it cannot tell. */
  readonly persisted: boolean | null;
  /** Bytes in use, roughly; `null` when the browser does not tell. */
  readonly usage: number | null;
  /** Bytes that may be used in all, roughly; `null` when the browser does not tell. */
  readonly quota: number | null;
}

/** As much of `navigator.storage` as is used; its parts are missing on old browsers and without a secure context. */
export type StorageParts = Partial<Pick<StorageManager, "persist" | "persisted" | "estimate">>;

/** How well this device keeps what the app stores, without asking anyone. */
export function storageSpace(storage: StorageParts | undefined = navigator.storage): Promise<StorageSpace> {
  return spaceAfter(storage, () => storage?.persisted?.());
}

/** Asks the browser not to clear the store unasked (some ask the reader in turn), then tells as {@link storageSpace} does. */
export function askToPersist(storage: StorageParts | undefined = navigator.storage): Promise<StorageSpace> {
  return spaceAfter(storage, async () => {
    if (await storage?.persisted?.()) return true;
    return storage?.persist?.();
  });
}

async function spaceAfter(
  storage: StorageParts | undefined,
  isPersisted: () => Promise<boolean | undefined> | undefined,
): Promise<StorageSpace> {
  const [persisted, estimate] = [
    await answerOf(isPersisted),
    await answerOf(async () => storage?.estimate?.()),
  ];
  return {
    persisted: persisted ?? null,
    usage: estimate?.usage ?? null,
    quota: estimate?.quota ?? null,
  };
}

/** An answer; `null` when the browser refuses one, as private windows do. */
async function answerOf<Answer>(ask: () => Promise<Answer> | undefined): Promise<Answer | null> {
  try {
    return (await ask()) ?? null;
  } catch {
    return null;
  }
}
