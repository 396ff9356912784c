import type { KeptRevision } from "../../core/library/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";

/** What a revision is called: its letter and who kept it. */
export const revisionName = ({ revision, by }: Pick<KeptRevision, "revision" | "by">): Message =>
  revision === null ? message("library/name-bare", { by }) : message("library/name", { revision, by });
