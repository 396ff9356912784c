import { parseArgs } from "node:util";
import { build, preview } from "vite";

/** Builds the app, serves it and prints, last, the address to open. */
const { values } = parseArgs({
  options: { host: { type: "string" }, port: { type: "string" } },
  args: process.argv.slice(2).map((argument) => (argument === "--host" ? "--host=0.0.0.0" : argument)),
});

await build({ logLevel: "warn" });
const server = await preview({
  logLevel: "warn",
  preview: {
    host: values.host ?? "localhost",
    ...(values.port === undefined ? {} : { port: Number(values.port) }),
  },
});

const { local, network } = server.resolvedUrls ?? { local: [], network: [] };
console.log("Tetherline is served; stop it with Ctrl+C. Open:");
for (const address of [...local, ...network]) console.log(address);
