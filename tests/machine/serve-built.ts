import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { startHub } from "../../src/hub/index.ts";
import { freePort } from "./free-port.ts";
import "./speak-english.ts";

/** A built app that is being served. */
export interface ServedApp {
  /** Where, without a slash at the end. */
  readonly address: string;
  readonly stop: () => Promise<void>;
}

/** Builds the app into a folder of its own and serves it from a hub at a free port, for programs that look at it. */
export async function serveBuilt(outDir: string): Promise<ServedApp> {
  await build({ logLevel: "warn", build: { outDir, emptyOutDir: true } });
  const data = mkdtempSync(join(tmpdir(), "tetherline-served-"));
  const hub = await startHub(
    {
      port: await freePort(4501),
      host: "localhost",
      data,
      certificate: null,
      key: null,
      engine: null,
      name: "looked at",
      plain: false,
      newOwnerCode: false,
      upstream: null,
      upstreamCode: null,
      app: outDir,
    },
    { out: () => {}, err: (text) => process.stderr.write(text) },
  );
  const [address] = hub.addresses;
  if (address === undefined) throw new Error("The built app is not served at any address.");
  return {
    address,
    stop: async () => {
      await hub.close();
      rmSync(data, { recursive: true, force: true });
    },
  };
}
