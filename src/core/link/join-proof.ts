/** The key of a device or hub, which signs for whoever has it. */
export interface SigningKey {
  /** Ed25519: 32 raw bytes in base64url. */
  readonly publicKey: string;
  /** The signature of bytes, or of a text in UTF-8: 64 bytes in base64url. */
  sign(said: string | Uint8Array): Promise<string>;
}

/** What a device signs to prove its key on joining. */
export interface JoinStatement {
  /** What the hub gave, good once and for minutes. */
  readonly challenge: string;
  readonly walk: string;
  /** The source of the device. */
  readonly device: string;
  /** Where the device reached the hub, `name:port`: what was signed for one hub is no good at another. */
  readonly host: string;
}

/** The proof of a key, as it goes along with the request to join. */
export interface JoinProof {
  readonly key: string;
  readonly challenge: string;
  readonly host: string;
  readonly signature: string;
}

/** The text that is signed, one part a line; no part has a line break. */
export function joinText({ challenge, walk, device, host }: JoinStatement): string {
  return ["tetherline join 1", challenge, walk, device, host].join("\n");
}
