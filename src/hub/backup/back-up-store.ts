import { existsSync } from "node:fs";
import { connect } from "node:net";
import { join, resolve } from "node:path";
import { text } from "node:stream/consumers";
import { z } from "zod";
import { jsonOf } from "../../core/log/index.ts";
import { message } from "../../words/index.ts";
import { EngineTroubleError, openEngine } from "../engine/index.ts";
import { machineSurroundings } from "../surroundings/index.ts";
import { backupSocketPath } from "./backup-socket.ts";

const answerSchema = z.object({ words: z.string().nullable() });

/**
 * Backs up the store of a data folder into a file that is not there yet: by the hub that uses it, or where none runs, at
 * first hand. Rejects with {@link EngineTroubleError} when that cannot be done.
 */
export async function backUpStore(folder: string, file: string): Promise<void> {
  const to = resolve(file);
  const answer = await askHub(folder, to);
  if (answer === null) return backUpAtFirstHand(folder, to);
  const read = answerSchema.safeParse(jsonOf(answer)).data;
  if (!read) throw new EngineTroubleError(message("backup/no-answer"));
  if (read.words !== null) throw new EngineTroubleError(read.words);
}

/** What the running hub answers; `null` where none runs. */
async function askHub(folder: string, to: string): Promise<string | null> {
  const socket = connect(backupSocketPath(folder));
  const isOpen = await new Promise<boolean>((done) => {
    socket.once("connect", () => done(true));
    socket.once("error", () => done(false));
  });
  if (!isOpen) return null;
  socket.write(`${JSON.stringify({ backup: to })}\n`);
  return text(socket).catch(() => "");
}

async function backUpAtFirstHand(folder: string, to: string): Promise<void> {
  if (!existsSync(join(folder, "walks.sqlite"))) {
    throw new EngineTroubleError(message("backup/nothing-there", { folder }));
  }
  const engine = await openEngine({ data: folder, engine: null, now: machineSurroundings.now });
  try {
    await engine.backup(to);
  } finally {
    await engine.close();
  }
}
