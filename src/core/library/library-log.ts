import type { WalkId } from "../units/index.ts";

/** The log in which the revisions of a library stand: it goes between devices and hubs as the log of a walk does. */
export const LIBRARY = "library" as WalkId;
