import { createPrivateKey, createPublicKey, generateKeyPairSync, sign } from "node:crypto";
import type { SigningKey } from "../../core/link/index.ts";
import { message } from "../../words/index.ts";
import type { Keep } from "../engine/index.ts";
import { EngineTroubleError } from "../engine/index.ts";

/** Among the secrets of a hub, see `secret-keep.ts`. */
const HUB_KEY = "hub.key";

/** The key that this hub proves to others: made once for all hubs on the engine, and kept among its secrets. */
export async function hubKey(keep: Keep): Promise<SigningKey> {
  const made = generateKeyPairSync("ed25519").privateKey.export({ type: "pkcs8", format: "der" });
  await keep.create(HUB_KEY, made.toString("base64url"));
  const kept = await keep.get(HUB_KEY);
  if (kept === null) throw new EngineTroubleError(message("engine/gives-nothing-back"));
  const key = createPrivateKey({ key: Buffer.from(kept, "base64url"), type: "pkcs8", format: "der" });
  const { x = "" } = createPublicKey(key).export({ format: "jwk" });
  return {
    publicKey: x,
    sign: async (said) => sign(null, Buffer.from(said), key).toString("base64url"),
  };
}
