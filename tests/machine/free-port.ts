import { createServer } from "node:net";

/** The first port from `from` on that nobody listens on at localhost. */
export async function freePort(from: number): Promise<number> {
  for (let port = from; port < from + 200; port += 1) if (await isFree(port)) return port;
  throw new Error(`No free port between ${from} and ${from + 199}.`);
}

function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", () => resolve(false));
    probe.listen(port, "localhost", () => probe.close(() => resolve(true)));
  });
}
