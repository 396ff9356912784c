import type { Message, Said } from "../../words/index.ts";
import { message, SaidError } from "../../words/index.ts";

/** Why a file cannot be used. */
export type FileTrouble = "not-found" | "directory" | "not-allowed" | "too-large" | "not-text" | "failed";

/** A file that cannot be read or written; it says so in one sentence for the person who named it. */
export class UnusableFileError extends SaidError {
  override readonly name = "UnusableFileError";
  /** As it was named. */
  readonly path: Said;
  readonly trouble: FileTrouble;

  constructor(path: Said, trouble: FileTrouble, said: Message, options?: ErrorOptions) {
    super(said, options);
    this.path = path;
    this.trouble = trouble;
  }
}

const TROUBLES = {
  ENOENT: ["not-found", "file/not-there"],
  ENOTDIR: ["not-found", "file/not-there"],
  EISDIR: ["directory", "file/is-directory"],
  EACCES: ["not-allowed", "file/not-this-user"],
  EPERM: ["not-allowed", "file/not-this-user"],
  EROFS: ["not-allowed", "file/read-only"],
  ENOSPC: ["failed", "file/disk-full"],
} as const;

const isKnown = (code: string): code is keyof typeof TROUBLES => Object.hasOwn(TROUBLES, code);

/** The error for a failure that Node reported. */
export function fileErrorOf(file: Said, doing: "read" | "written", cause: unknown): UnusableFileError {
  const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
  const [trouble, why] = isKnown(code)
    ? ([TROUBLES[code][0], message(TROUBLES[code][1])] as const)
    : (["failed", code ? message("file/system-reports", { code }) : message("file/system-error")] as const);
  return new UnusableFileError(file, trouble, message(`file/not-${doing}`, { file, why }), { cause });
}
