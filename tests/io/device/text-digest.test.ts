import { expect, it } from "vitest";
import { textDigest } from "../../../src/io/device/index.ts";

it("[WRT10] digests a text as SHA-256 does, and gives none where there is no such thing", async () => {
  // FIPS 180-4, example of one block: "abc".
  expect(await textDigest("abc")).toBe(
    "sha-256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  );
  expect(await textDigest("abd")).not.toBe(await textDigest("abc"));
  expect(await textDigest("abc", null as never)).toBeNull();
});
