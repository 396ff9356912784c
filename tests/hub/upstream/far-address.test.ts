import { X509Certificate } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { startHub } from "../../../src/hub/index.ts";
import { machineSurroundings } from "../../../src/hub/surroundings/index.ts";
import { selfMadeCertificate } from "../../../src/hub/tls/index.ts";
import { askFar, readFarAddress } from "../../../src/hub/upstream/index.ts";
import { notes } from "../engine/written-notes.ts";
import { LiveHub } from "./live-hub.ts";
import { HERE, PATIENT } from "./two-hubs.ts";

const DIGITS = "AB".repeat(32);
const PEM = /-----BEGIN[\s\S]+?END CERTIFICATE-----/g;

describe("[LINK] address of another hub", () => {
  test("is an origin, with a fingerprint where TLS is", () => {
    expect(readFarAddress("http://ground:4173")).toEqual({ origin: "http://ground:4173", fingerprint: null });
    expect(readFarAddress("https://[::1]:4173/")).toEqual({
      origin: "https://[::1]:4173",
      fingerprint: null,
    });
    const pairs = DIGITS.match(/../g)?.join(":");
    expect(readFarAddress(`https://g#${pairs}`)).toEqual({ origin: "https://g", fingerprint: DIGITS });
    expect(readFarAddress(`https://g#sha256=${DIGITS.toLowerCase()}`)?.fingerprint).toBe(DIGITS);
  });

  test.each([
    "",
    "ground",
    "ftp://g",
    "https://g/path",
    "https://g?x",
    "https://u:p@g",
    "https://g#ab",
    "https://g#%",
    `http://g#${DIGITS}`,
  ])("%s is none", (text) => {
    expect(readFarAddress(text)).toBeNull();
  });
});

describe("[LINK] over TLS", { timeout: 60_000 }, () => {
  let folder: string;
  let ground: LiveHub;
  let certificate: Awaited<ReturnType<typeof selfMadeCertificate>>;
  const self = (name: string) =>
    selfMadeCertificate(
      join(folder, name),
      "ground",
      { names: ["elsewhere"], addresses: [] },
      machineSurroundings,
    );
  const ask = async (hub: LiveHub, fingerprint: string | null): Promise<number | undefined> => {
    const pin = fingerprint?.replaceAll(":", "") ?? null;
    const answer = await askFar({ origin: `https://127.0.0.1:${hub.port}`, fingerprint: pin })({
      method: "GET",
      path: "/api/clock",
      headers: {},
      isLong: false,
      signal: AbortSignal.timeout(10_000),
    });
    answer.drop();
    return answer.status;
  };

  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), "tetherline-pin-"));
    certificate = await self("one");
    ground = await new LiveHub("ground", certificate).open();
  });
  afterEach(async () => {
    await ground.remove();
    rmSync(folder, { recursive: true, force: true });
  });

  test("a certificate named by its fingerprint is trusted, whatever names it has; no other is", async () => {
    expect(await ask(ground, certificate.fingerprint)).toBe(200);
    await expect(ask(ground, null)).rejects.toThrow(/cannot be reached/);
    await expect(ask(ground, DIGITS)).rejects.toThrow(/another certificate than the one named/);
  });

  test("so is one signed by the authority that is named; one that only shows it beside itself is not", async () => {
    const authority = certificate.authority?.certificate ?? "";
    const pin = certificate.authority?.fingerprint ?? "";
    const other = await self("two");
    const [own = ""] = certificate.certificate.match(PEM) ?? [];
    const [forged = ""] = other.certificate.match(PEM) ?? [];
    const honest = await new LiveHub("ground", {
      certificate: `${own}\n${authority}`,
      key: certificate.key,
    }).open();
    const liar = await new LiveHub("ground", {
      certificate: `${forged}\n${authority}`,
      key: other.key,
    }).open();
    try {
      expect(new X509Certificate(forged).verify(new X509Certificate(authority).publicKey)).toBe(false);
      expect(await ask(honest, pin)).toBe(200);
      await expect(ask(liar, pin)).rejects.toThrow(/another certificate than the one named/);
    } finally {
      await honest.remove();
      await liar.remove();
    }
  });

  test("a hub started with --upstream links by itself and ends in order; a wrong address is said to be one", async () => {
    const options = {
      port: 0,
      host: "127.0.0.1",
      certificate: null,
      key: null,
      engine: null,
      name: "vehicle",
      plain: false,
      newOwnerCode: false,
      rate: 30_000,
      app: "/nowhere",
    };
    await ground.write(notes(1, 2, { source: HERE }));
    let said = "";
    const hear = (text: string) => {
      said += text;
    };
    const upstream = `https://127.0.0.1:${ground.port}#${certificate.fingerprint}`;
    const vehicle = await startHub(
      { ...options, data: join(folder, "vehicle"), upstream, upstreamCode: ground.ownerCode },
      { out: hear, err: hear },
    );
    const code = /Owner's code: (\S+)/.exec(said)?.[1] ?? "";
    const counts = async () => {
      const headers = { authorization: `Bearer ${code}` };
      const answer = await fetch(`${vehicle.addresses[0]}/api/walks`, { headers });
      const { walks } = (await answer.json()) as { walks: readonly { entries: number }[] };
      return walks.map(({ entries }) => entries);
    };
    await expect.poll(counts, PATIENT).toEqual([2]);
    await vehicle.close();
    await expect(
      startHub(
        { ...options, data: join(folder, "other"), upstream: "ground", upstreamCode: "x" },
        { out: hear, err: hear },
      ),
    ).rejects.toThrow(/other hub's address is not understood/);
  });
});
