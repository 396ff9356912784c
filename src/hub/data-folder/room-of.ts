import { statfs } from "node:fs/promises";

/** The room of the disk that a folder is on, in bytes: what is free for this user, and the whole; `null` where it cannot be told. */
export async function roomOf(
  folder: string | undefined,
): Promise<{ readonly free: number; readonly size: number } | null> {
  if (folder === undefined) return null;
  try {
    const { bavail, blocks, bsize } = await statfs(folder);
    return { free: bavail * bsize, size: blocks * bsize };
  } catch {
    return null;
  }
}
