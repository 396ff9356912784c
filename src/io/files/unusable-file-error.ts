/** Why a file cannot be used. */
export type FileTrouble = "not-found" | "directory" | "not-allowed" | "too-large" | "not-text" | "failed";

/** A file that cannot be read or written; its message is one sentence for the person who named it. */
export class UnusableFileError extends Error {
  override readonly name = "UnusableFileError";
  /** As it was named. */
  readonly path: string;
  readonly trouble: FileTrouble;

  constructor(path: string, trouble: FileTrouble, message: string, options?: ErrorOptions) {
    super(message, options);
    this.path = path;
    this.trouble = trouble;
  }
}

const TROUBLES: Readonly<Record<string, readonly [FileTrouble, string]>> = {
  ENOENT: ["not-found", "there is no such file"],
  ENOTDIR: ["not-found", "there is no such file"],
  EISDIR: ["directory", "it is a directory, not a file"],
  EACCES: ["not-allowed", "this user may not open it"],
  EPERM: ["not-allowed", "this user may not open it"],
  EROFS: ["not-allowed", "the disk is read-only"],
  ENOSPC: ["failed", "the disk is full"],
};

/** The error for a failure that Node reported. */
export function fileErrorOf(path: string, doing: "read" | "written", cause: unknown): UnusableFileError {
  const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
  const [trouble, why] = TROUBLES[code] ?? ["failed", `the system reports ${code || "an error"}`];
  return new UnusableFileError(path, trouble, `"${path}" cannot be ${doing}: ${why}.`, { cause });
}
