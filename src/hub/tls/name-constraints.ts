// The certificate library keeps its registry in metadata of classes.
import "reflect-metadata";
import { BlockList, isIP, isIPv6 } from "node:net";
import { AsnConvert } from "@peculiar/asn1-schema";
import {
  GeneralName,
  GeneralSubtree,
  GeneralSubtrees,
  id_ce_nameConstraints,
  NameConstraints,
} from "@peculiar/asn1-x509";
import { Extension, X509Certificate } from "@peculiar/x509";
import { type MachineNames, PRIVATE_ENDINGS } from "./machine-names.ts";

/**
 * Networks whose addresses are no site's (RFC 1918, 3927, 4193, 4291, 6598) and those of a machine for itself. They are
 * permitted as a whole, since a machine gets another address on each network that it joins.
 */
const PRIVATE_NETWORKS = [
  "127.0.0.0/8",
  "10.0.0.0/8",
  "172.16.0.0/12",
  "192.168.0.0/16",
  "169.254.0.0/16",
  "100.64.0.0/10",
  "::1/128",
  "fc00::/7",
  "fe80::/10",
] as const;

/**
 * What an authority may sign for, as its critical extension (RFC 5280 §4.2.1.10): the names of this machine, with the
 * endings of private networks, and addresses of private networks; of others only those that the machine has.
 */
export function nameConstraints({ names, addresses }: MachineNames): Extension {
  const dns = names.flatMap((name) => PRIVATE_ENDINGS.map((ending) => name + ending));
  const own = addresses.filter((address) => !isPrivate(address));
  const networks = [...PRIVATE_NETWORKS, ...own.map((address) => `${address}/${isIPv6(address) ? 128 : 32}`)];
  const permitted = [
    ...[...new Set(dns)].map((dNSName) => ({ dNSName })),
    ...networks.map((iPAddress) => ({ iPAddress })),
  ];
  const constraints = new NameConstraints({
    permittedSubtrees: new GeneralSubtrees(
      permitted.map((name) => new GeneralSubtree({ base: new GeneralName(name) })),
    ),
  });
  return new Extension(id_ce_nameConstraints, true, AsnConvert.serialize(constraints));
}

/** Whether an authority, in PEM, may sign for all names and addresses of a machine. One without constraints may. */
export function maySignFor(authority: string, { names, addresses }: MachineNames): boolean {
  const extension = new X509Certificate(authority).getExtension(id_ce_nameConstraints);
  if (!extension) return true;
  const { permittedSubtrees } = AsnConvert.parse(extension.value, NameConstraints);
  const permitted = [...(permittedSubtrees ?? [])].map(({ base }) => base);
  const dns = permitted.flatMap(({ dNSName }) => dNSName ?? []);
  const networks = networksOf(permitted.flatMap(({ iPAddress }) => iPAddress ?? []));
  return (
    names.every((name) => dns.some((base) => name === base || name.endsWith(`.${base}`))) &&
    addresses.every((address) => networks.check(address, kindOf(address)))
  );
}

function isPrivate(address: string): boolean {
  return networksOf(PRIVATE_NETWORKS).check(address, kindOf(address));
}

/** Networks, written as an address and the length of its prefix, as a list to look addresses up in. */
function networksOf(written: readonly string[]): BlockList {
  const networks = new BlockList();
  for (const network of written) {
    const [base = "", length = ""] = network.split("/");
    if (isIP(base) !== 0) networks.addSubnet(base, Number(length), kindOf(base));
  }
  return networks;
}

const kindOf = (address: string) => (isIPv6(address) ? "ipv6" : "ipv4");
