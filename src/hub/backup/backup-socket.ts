import { createHash } from "node:crypto";
import { chmodSync, rmSync } from "node:fs";
import { createServer, type Socket } from "node:net";
import { join, resolve } from "node:path";
import { createInterface } from "node:readline";
import { z } from "zod";
import { jsonOf } from "../../core/log/index.ts";
import { inWords, message, saidBy, words } from "../../words/index.ts";
import type { Engine } from "../engine/index.ts";

const requestSchema = z.object({ backup: z.string().min(1) });

/** Where a running hub takes wishes for backups: whoever may enter its data folder may ask. */
export function backupSocketPath(folder: string): string {
  if (process.platform !== "win32") return join(folder, "hub.sock");
  return `\\\\.\\pipe\\tetherline-${createHash("sha256").update(resolve(folder)).digest("hex").slice(0, 16)}`;
}

/**
 * Takes wishes for backups from other processes of this machine until the function that is returned is called. A hub whose
 * folder's name is too long for a socket runs without, which `tell` hears.
 */
export async function serveBackups(
  folder: string,
  engine: Pick<Engine, "backup">,
  tell: (words: string) => void,
): Promise<() => Promise<void>> {
  const path = backupSocketPath(folder);
  const server = createServer((socket) => answer(socket, engine));
  // Left by a hub that ended suddenly; this one holds the store, so that nobody else listens there.
  if (process.platform !== "win32") rmSync(path, { force: true });
  const isOpen = await new Promise<boolean>((done) => {
    server.once("error", () => done(false));
    server.listen(path, () => done(true));
  });
  if (!isOpen) {
    tell(words("backup/no-socket", { path }));
    return async () => {};
  }
  if (process.platform !== "win32") chmodSync(path, 0o600);
  server.unref();
  return () => new Promise((done) => server.close(() => done()));
}

function answer(socket: Socket, engine: Pick<Engine, "backup">): void {
  socket.on("error", () => socket.destroy());
  createInterface({ input: socket }).once("line", async (line) => {
    const wish = requestSchema.safeParse(jsonOf(line)).data;
    try {
      if (!wish) throw new Error(inWords(message("answer/not-understood")));
      await engine.backup(wish.backup);
      socket.end(`${JSON.stringify({ words: null })}\n`);
    } catch (cause) {
      socket.end(`${JSON.stringify({ words: inWords(saidBy(cause)) })}\n`);
    }
  });
}
