import { generateKeyPairSync, sign } from "node:crypto";
import type { JoinProof, SigningKey } from "../../src/core/link/index.ts";
import { joinText } from "../../src/core/link/index.ts";
import type { Role } from "../../src/core/log/index.ts";
import { type TestHub, WALK } from "./test-hub.ts";

/** Under which name the tests' hubs are asked past the network. */
export const HOST = "localhost:80";

/** A key made for a test. */
export function newKey(): SigningKey {
  const { privateKey, publicKey } = generateKeyPairSync("ed25519");
  return {
    publicKey: publicKey.export({ format: "jwk" }).x ?? "",
    sign: async (said) => sign(null, Buffer.from(said), privateKey).toString("base64url"),
  };
}

/** How a device asks to be let in. */
export interface Joining {
  readonly code: string;
  readonly device: string;
  readonly key?: SigningKey | null;
  readonly token?: string;
  /** For the owner's code. */
  readonly walk?: string;
  readonly role?: Role;
}

/** A challenge of a hub for a device, as answered. */
export function challengeOf(hub: TestHub, { code, device, walk }: Joining) {
  return hub.ask("POST", "/api/join/challenge", {
    body: { code, device, ...(walk === undefined ? {} : { walk }) },
  });
}

/** Proves a key as a device does; `null` without a key, or when the hub gives no challenge. */
export async function proofOf(hub: TestHub, joining: Joining): Promise<JoinProof | null> {
  const { key = null, device } = joining;
  if (key === null) return null;
  const answer = await challengeOf(hub, joining);
  if (answer.statusCode !== 200) return null;
  const { challenge, walk = WALK } = answer.json<{ challenge: string; walk: string }>();
  const signature = await key.sign(joinText({ challenge, walk, device, host: HOST }));
  return { key: key.publicKey, challenge, host: HOST, signature };
}

/** Joins with a key or without one; returns the answer. */
export async function joinWith(hub: TestHub, joining: Joining, proof?: JoinProof | null) {
  const { key: _key, token, ...asked } = joining;
  const proved = proof ?? (await proofOf(hub, joining));
  const body = { ...asked, ...(proved ? { proof: proved } : {}) };
  return hub.ask("POST", "/api/join", { token, body });
}
