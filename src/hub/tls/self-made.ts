import { words } from "../../words/index.ts";
// The certificate library keeps its registry in metadata of classes.
import "reflect-metadata";
import {
  BasicConstraintsExtension,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  type GeneralNameType,
  KeyUsageFlags,
  KeyUsagesExtension,
  SubjectAlternativeNameExtension,
  SubjectKeyIdentifierExtension,
  X509Certificate,
  X509CertificateGenerator,
} from "@peculiar/x509";
import type { Instant } from "../../core/units/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import type { MachineNames } from "./machine-names.ts";
import { nameConstraints } from "./name-constraints.ts";

const { subtle } = globalThis.crypto;
const SIGNING = { name: "ECDSA", namedCurve: "P-256", hash: "SHA-256" };
const DAY = 24 * 3_600_000;
const AUTHORITY_DAYS = 3650;
/** Apple's systems take no certificate of 398 days or more. */
const LEAF_DAYS = 397;
/** Clocks of tablets may be behind by so much. */
const LEEWAY = DAY;

/** A certificate and its private key, in PEM. */
export interface KeyedCertificate {
  readonly certificate: string;
  readonly key: string;
}

const pem = (label: string, bytes: ArrayBuffer): string =>
  `-----BEGIN ${label}-----\n${(
    Buffer.from(bytes)
      .toString("base64")
      .match(/.{1,64}/g) ?? []
  ).join("\n")}\n-----END ${label}-----\n`;

const keyPem = async (key: CryptoKey) => pem("PRIVATE KEY", await subtle.exportKey("pkcs8", key));

const newKeys = () => subtle.generateKey(SIGNING, true, ["sign", "verify"]);

function term(now: Instant, days: number): { notBefore: Date; notAfter: Date } {
  return { notBefore: new Date(now - LEEWAY), notAfter: new Date(now - LEEWAY + days * DAY) };
}

/** A positive serial number of 16 bytes. */
function serialNumber({ randomBytes }: Surroundings): string {
  const [first = 0, ...rest] = randomBytes(16);
  return Buffer.from([(first & 0x7f) | 0x40, ...rest]).toString("hex");
}

/**
 * Makes an authority that signs certificates of this hub and nothing below them. Tablets that trust it believe it of this
 * machine's names and of private networks alone, whoever gets at its key.
 */
export async function newAuthority(
  name: string,
  machine: MachineNames,
  surroundings: Surroundings,
): Promise<KeyedCertificate> {
  const keys = await newKeys();
  const certificate = await X509CertificateGenerator.createSelfSigned({
    serialNumber: serialNumber(surroundings),
    name: [{ O: ["Tetherline"] }, { CN: [words("hub/authority-name", { name })] }],
    ...term(surroundings.now(), AUTHORITY_DAYS),
    signingAlgorithm: SIGNING,
    keys,
    extensions: [
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      nameConstraints(machine),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return { certificate: `${certificate.toString("pem").trimEnd()}\n`, key: await keyPem(keys.privateKey) };
}

/** Makes a certificate for this machine, signed by an authority. */
export async function newLeaf(
  authority: KeyedCertificate,
  { names, addresses }: MachineNames,
  surroundings: Surroundings,
): Promise<KeyedCertificate> {
  const issuer = new X509Certificate(authority.certificate);
  const signingKey = await subtle.importKey(
    "pkcs8",
    Buffer.from(authority.key.replaceAll(/-----[A-Z ]+-----|\s/g, ""), "base64"),
    SIGNING,
    false,
    ["sign"],
  );
  const keys = await newKeys();
  const alternatives = [
    ...names.map((value) => ({ type: "dns" as GeneralNameType, value })),
    ...addresses.map((value) => ({ type: "ip" as GeneralNameType, value })),
  ];
  const certificate = await X509CertificateGenerator.create({
    serialNumber: serialNumber(surroundings),
    subject: [{ O: ["Tetherline"] }, { CN: [names[0] ?? "localhost"] }],
    issuer: issuer.subjectName,
    ...term(surroundings.now(), LEAF_DAYS),
    signingAlgorithm: SIGNING,
    publicKey: keys.publicKey,
    signingKey,
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new SubjectAlternativeNameExtension(alternatives),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return { certificate: `${certificate.toString("pem").trimEnd()}\n`, key: await keyPem(keys.privateKey) };
}
