import { X509Certificate } from "node:crypto";
import { readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { createSecureContext } from "node:tls";
import { message, SaidError } from "../../words/index.ts";
import { makeFolder } from "../data-folder/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import type { MachineNames } from "./machine-names.ts";
import { maySignFor } from "./name-constraints.ts";
import { type KeyedCertificate, newAuthority, newLeaf } from "./self-made.ts";

/** What a hub shows to prove who it is. */
export interface HubCertificate extends KeyedCertificate {
  /** SHA-256 of the certificate, in pairs of hexadecimal digits. */
  readonly fingerprint: string;
  /** The authority that a tablet is to trust, where this hub made its own. */
  readonly authority: { readonly certificate: string; readonly fingerprint: string } | null;
}

/** A certificate that cannot be had or used: a sentence for the console. */
export class CertificateTroubleError extends SaidError {
  override readonly name = "CertificateTroubleError";
}

/** A certificate with less time left than this, in ms, is made anew. */
const RENEWED_BEFORE = 30 * 24 * 3_600_000;

const fingerprintOf = (certificate: string) => new X509Certificate(certificate).fingerprint256;

/** Reads a certificate (with its chain) and its key from files somebody gave. Rejects with {@link CertificateTroubleError}. */
export async function givenCertificate(certificateFile: string, keyFile: string): Promise<HubCertificate> {
  const [certificate, key] = await Promise.all(
    [certificateFile, keyFile].map(async (file) => {
      const text = await readFile(file, "utf8").catch(() => null);
      if (text === null) throw new CertificateTroubleError(message("hub/certificate-unreadable", { file }));
      return text;
    }),
  );
  try {
    createSecureContext({ cert: certificate, key });
    return {
      certificate: certificate ?? "",
      key: key ?? "",
      fingerprint: fingerprintOf(certificate ?? ""),
      authority: null,
    };
  } catch {
    throw new CertificateTroubleError(
      message("hub/not-a-certificate", { certificate: certificateFile, key: keyFile }),
    );
  }
}

/**
 * The hub's own certificate: an authority kept in the data folder, and a certificate for this machine that is made anew
 * when it is about to run out or the machine has other names and addresses. The authority itself is made anew, and has to
 * be trusted anew, when it may not sign for those. Keys are readable by their owner only.
 */
export async function selfMadeCertificate(
  data: string,
  name: string,
  machine: MachineNames,
  surroundings: Surroundings,
): Promise<HubCertificate> {
  const folder = join(data, "tls");
  try {
    makeFolder(folder);
    const keptAuthority = await keptPair(folder, "authority");
    const authority =
      keptAuthority &&
      isLasting(keptAuthority, surroundings) &&
      maySignFor(keptAuthority.certificate, machine)
        ? keptAuthority
        : await keep(folder, "authority", await newAuthority(name, machine, surroundings));
    const keptLeaf = await keptPair(folder, "hub");
    const leaf =
      keptLeaf && isLasting(keptLeaf, surroundings) && isFor(keptLeaf, authority, machine)
        ? keptLeaf
        : await keep(folder, "hub", await newLeaf(authority, machine, surroundings));
    return {
      certificate: leaf.certificate + authority.certificate,
      key: leaf.key,
      fingerprint: fingerprintOf(leaf.certificate),
      authority: {
        certificate: authority.certificate,
        fingerprint: fingerprintOf(authority.certificate),
      },
    };
  } catch (cause) {
    if (cause instanceof Error && "code" in cause && "path" in cause) {
      throw new CertificateTroubleError(message("hub/folder-unusable", { folder, code: String(cause.code) }));
    }
    throw cause;
  }
}

/** A pair kept before; `null` when there is none, or it is not whole. */
async function keptPair(folder: string, name: string): Promise<KeyedCertificate | null> {
  const [certificate, key] = await Promise.all(
    [`${name}.crt`, `${name}.key`].map((file) =>
      readFile(join(folder, file), "utf8").catch((cause: NodeJS.ErrnoException) => {
        if (cause.code === "ENOENT") return null;
        throw cause;
      }),
    ),
  );
  if (!(certificate && key)) return null;
  try {
    createSecureContext({ cert: certificate, key });
    return { certificate, key };
  } catch {
    return null;
  }
}

async function keep(folder: string, name: string, made: KeyedCertificate): Promise<KeyedCertificate> {
  for (const [file, text] of [
    [`${name}.key`, made.key],
    [`${name}.crt`, made.certificate],
  ] as const) {
    // Whole or not at all, should the power fail.
    await writeFile(join(folder, `${file}.new`), text, { mode: 0o600 });
    await rename(join(folder, `${file}.new`), join(folder, file));
  }
  return made;
}

function isLasting({ certificate }: KeyedCertificate, { now }: Surroundings): boolean {
  const { validFrom, validTo } = new X509Certificate(certificate);
  return Date.parse(validFrom) <= now() && Date.parse(validTo) - RENEWED_BEFORE > now();
}

function isFor(
  leaf: KeyedCertificate,
  authority: KeyedCertificate,
  { names, addresses }: MachineNames,
): boolean {
  const certificate = new X509Certificate(leaf.certificate);
  return (
    certificate.verify(new X509Certificate(authority.certificate).publicKey) &&
    names.every((name) => certificate.checkHost(name) !== undefined) &&
    addresses.every((address) => certificate.checkIP(address) !== undefined)
  );
}
