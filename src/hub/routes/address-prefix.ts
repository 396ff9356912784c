import { isIPv4 } from "node:net";

/** What one customer of a network has of its addresses: an IPv4 address, or the first 64 bits of an IPv6 address (`2001:db8:0:1::`). */
export function addressPrefix(address: string): string {
  const bare = address.replace(/^::ffff:(?=\d+\.)/i, "").replace(/%.*$/, "");
  if (isIPv4(bare) || !bare.includes(":")) return bare;
  const [head = "", tail = ""] = bare.toLowerCase().split("::");
  const before = head === "" ? [] : head.split(":");
  const after = tail === "" ? [] : tail.split(":");
  const gap = bare.includes("::")
    ? Array<string>(Math.max(0, 8 - before.length - after.length)).fill("0")
    : [];
  const groups = [...before, ...gap, ...after].slice(0, 4).map((group) => group.replace(/^0+(?=.)/, ""));
  return `${groups.join(":")}::`;
}
