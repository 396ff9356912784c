import { isNativeShell } from "./native-shell.ts";

/** Where the platform keeps small secrets, apart from what the app keeps: Android's Keystore or the Keychain of iOS. */
export interface Keystore {
  /** What was kept under a name; `null` where nothing is. Rejects when the platform does not answer. */
  get(name: string): Promise<Uint8Array | null>;
  /** Keeps bytes under a name; false where the platform does not take them. Never rejects. */
  keep(name: string, bytes: Uint8Array): Promise<boolean>;
}

const PREFIX = "tetherline-";

/**
 * The keystore of the native shell that the page runs in; `null` in a browser. What is kept stays on this device: it goes neither
 * to a cloud nor into a backup that another device could take in.
 */
export async function shellKeystore(page: object = globalThis): Promise<Keystore | null> {
  if (!isNativeShell(page)) return null;
  const { Capacitor } = await import("@capacitor/core");
  // On the web the library falls back to plain storage, which is no keystore.
  if (Capacitor.getPlatform() === "web") return null;
  const { KeychainAccess, SecureStorage } = await import("@aparajita/capacitor-secure-storage");
  await SecureStorage.setKeyPrefix(PREFIX);
  return {
    get: async (name) => {
      const kept = await SecureStorage.get(name, false, false);
      return typeof kept === "string" ? Uint8Array.from(atob(kept), (letter) => letter.charCodeAt(0)) : null;
    },
    keep: async (name, bytes) => {
      const text = btoa(String.fromCharCode(...bytes));
      try {
        await SecureStorage.set(name, text, false, false, KeychainAccess.afterFirstUnlockThisDeviceOnly);
        return (await SecureStorage.get(name, false, false)) === text;
      } catch {
        return false;
      }
    },
  };
}
