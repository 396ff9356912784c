import { hostname, networkInterfaces } from "node:os";

/** Every name and address under which this machine can be reached on its networks. */
export interface MachineNames {
  readonly names: readonly string[];
  readonly addresses: readonly string[];
}

/** Endings of names that nobody can register, so that a machine's own name before them is its own. */
export const PRIVATE_ENDINGS: readonly string[] = ["", ".local", ".lan", ".home.arpa", ".internal"];

/** Addresses of this machine on its networks, without those of the machine for itself; IPv4 first. */
export function lanAddresses(): readonly string[] {
  return (
    Object.values(networkInterfaces())
      .flatMap((entries) => entries ?? [])
      // A link-local IPv6 address needs a zone, which no certificate and no address bar takes.
      .filter(({ internal, address }) => !internal && !address.startsWith("fe80:"))
      .sort((a, b) => a.family.localeCompare(b.family))
      .map(({ address }) => address)
  );
}

/** What a certificate of this machine has to name. */
export function machineNames(): MachineNames {
  return {
    names: [...new Set(["localhost", hostname().toLowerCase()])].filter((name) =>
      /^[a-z0-9.-]{1,253}$/.test(name),
    ),
    addresses: [...new Set(["127.0.0.1", "::1", ...lanAddresses()])],
  };
}
