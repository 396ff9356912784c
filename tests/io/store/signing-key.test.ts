import { createPublicKey, randomBytes, verify } from "node:crypto";
import { describe, expect, it } from "vitest";
import { keySchema } from "../../../src/hub/admission/index.ts";
import { openStore } from "../../../src/io/store/index.ts";
import type { KeptKey } from "../../../src/io/store/signing-key.ts";
import { heldKey, keyPlaceInMemory } from "../../../src/io/store/signing-key.ts";
import { freshIndexedDb, standing } from "./stand-ins.ts";

const { subtle } = globalThis.crypto;
const PLATFORM = { subtle, random: (count: number) => new Uint8Array(randomBytes(count)), isShell: false };
const opened = (parts: Partial<Parameters<typeof openStore>[0]> = {}) =>
  openStore({ now: standing, indexedDb: freshIndexedDb(), ...parts });
const without = (change: { readonly generateKey: () => Promise<never> }): SubtleCrypto =>
  new Proxy(subtle, {
    get: (target, name) => Reflect.get(change, name) ?? Reflect.get(target, name).bind(target),
  });

describe("[SEL3] the key of a device", () => {
  it("is made when it is first asked for, kept for every page and visit, and signs what the hub can check", async () => {
    const indexedDb = freshIndexedDb();
    const [one, two] = [await opened({ indexedDb }), await opened({ indexedDb })];
    const held = await Promise.all([one.key(), two.key(), one.key()]);
    const keys = new Set(held.map(({ key }) => key?.publicKey));
    expect(keys.size).toBe(1);
    one.close();
    two.close();
    const again = await (await opened({ indexedDb })).key();
    const publicKey = again.key?.publicKey ?? "";
    expect([...keys]).toEqual([publicKey]);
    expect(keySchema.safeParse(publicKey).success).toBe(true);
    const signature = Buffer.from((await again.key?.sign("text ä")) ?? "", "base64url");
    const key = createPublicKey({ key: { kty: "OKP", crv: "Ed25519", x: publicKey }, format: "jwk" });
    expect(verify(null, Buffer.from("text ä"), key, signature)).toBe(true);
  });

  it("gives its secret to nobody", async () => {
    const place = keyPlaceInMemory();
    await heldKey(place, PLATFORM);
    const kept = await place.get();
    if (!kept || !("pair" in kept)) throw new Error("no such key was kept");
    for (const format of ["pkcs8", "jwk"] as const) {
      await expect(subtle.exportKey(format, kept.pair.privateKey)).rejects.toThrow();
    }
  });

  it("is missing outside of secure contexts", async () => {
    expect(await (await opened({ subtle: null })).key()).toEqual({ key: null, lack: "insecure" });
  });

  it("[SEL3] is made of a seed, and said to be copyable, where the browser has no Ed25519 or cannot keep such keys", async () => {
    const unsupported = without({
      generateKey: () => Promise.reject(new DOMException("", "NotSupportedError")),
    });
    const indexedDb = freshIndexedDb();
    const made = await (await opened({ subtle: unsupported, indexedDb })).key();
    expect(made).toMatchObject({ lack: null, isCopyable: true });
    const again = await (await opened({ subtle: unsupported, indexedDb })).key();
    expect(again.key?.publicKey).toBe(made.key?.publicKey);
    const signature = Buffer.from((await again.key?.sign("text ä")) ?? "", "base64url");
    const key = createPublicKey({
      key: { kty: "OKP", crv: "Ed25519", x: made.key?.publicKey ?? "" },
      format: "jwk",
    });
    expect(verify(null, Buffer.from("text ä"), key, signature)).toBe(true);
    const memory = keyPlaceInMemory();
    const noPairs = {
      ...memory,
      keep: (kept: KeptKey) =>
        "pair" in kept ? Promise.reject(new DOMException("", "DataCloneError")) : memory.keep(kept),
    };
    expect(await heldKey(noPairs, PLATFORM)).toMatchObject({ lack: null, isCopyable: true });
  });

  it("[SEL3] is made in a native shell also where its web view has no secure context", async () => {
    const shell = { ...PLATFORM, subtle: undefined, isShell: true };
    expect(await heldKey(keyPlaceInMemory(), shell)).toMatchObject({ lack: null, isCopyable: true });
  });

  it("[SEL3] has its seed in the keystore of the native shell, where there is one that takes it", async () => {
    const secrets = new Map<string, Uint8Array>();
    const keystore = {
      get: async (name: string) => secrets.get(name) ?? null,
      keep: async (name: string, bytes: Uint8Array) => secrets.set(name, bytes).has(name),
    };
    const shell = { ...PLATFORM, subtle: undefined, isShell: true, keystore: async () => keystore };
    const place = keyPlaceInMemory();
    const made = await heldKey(place, shell);
    expect(made).toMatchObject({ lack: null, isCopyable: false });
    const publicKey = made.key?.publicKey ?? "";
    // What is kept beside the keystore is known to everybody.
    expect(await place.get()).toEqual({ publicKey, in: "keystore" });
    expect([...secrets.keys()]).toEqual([publicKey]);
    const again = await heldKey(place, shell);
    expect(await again.key?.sign("text")).toBe(await made.key?.sign("text"));

    // The data of the app on another device, whose keystore never had the key.
    secrets.clear();
    expect(await heldKey(place, shell)).toEqual({ key: null, lack: "not-kept" });
    expect(await heldKey(place, { ...shell, keystore: async () => null })).toMatchObject({ key: null });

    const refusing = { ...shell, keystore: async () => ({ ...keystore, keep: async () => false }) };
    expect(await heldKey(keyPlaceInMemory(), refusing)).toMatchObject({ lack: null, isCopyable: true });
    const silent = { ...shell, keystore: () => Promise.reject(new Error("no answer")) };
    expect(await heldKey(keyPlaceInMemory(), silent)).toEqual({ key: null, lack: "not-kept" });
  });

  it("is not used when it could not be kept: a name that is tied to it would be lost at the next visit", async () => {
    const store = await opened();
    store.close();
    expect(await store.key()).toEqual({ key: null, lack: "not-kept" });
    const place = { ...keyPlaceInMemory(), keep: () => Promise.reject(new Error("full")) };
    expect(await heldKey(place, PLATFORM)).toEqual({ key: null, lack: "not-kept" });
  });

  it("lasts as long as the source where nothing can be kept", async () => {
    const indexedDb = freshIndexedDb();
    indexedDb.indexedDB.open = () => {
      throw new DOMException("", "SecurityError");
    };
    const store = await opened({ indexedDb });
    expect(store.log.status().kind).toBe("memory");
    const [one, two] = [await store.key(), await store.key()];
    expect(one.key?.publicKey).toBe(two.key?.publicKey);
    expect(one.key).not.toBeNull();
  });
});
