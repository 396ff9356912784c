import { build, preview } from "vite";

/** A built app that is being served. */
export interface ServedApp {
  /** Where, without a slash at the end. */
  readonly address: string;
  readonly stop: () => Promise<void>;
}

/** Builds the app into a folder of its own and serves it at a free port, for programs that look at it. */
export async function serveBuilt(outDir: string): Promise<ServedApp> {
  await build({ logLevel: "warn", build: { outDir, emptyOutDir: true } });
  const server = await preview({ logLevel: "warn", build: { outDir }, preview: { port: 4501 } });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error("The built app is not served at any address.");
  return { address: address.replace(/\/$/, ""), stop: () => server.close() };
}
