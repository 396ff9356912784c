import type { Message } from "../../words/index.ts";
import type { BraidSampleName } from "../braid/index.ts";

/** A screen that explains itself ([HLP1]). The timeline of a plan and that of a walk share one page. */
export type HelpScreen =
  | "shelf"
  | "read"
  | "timeline"
  | "follow"
  | "train"
  | "review"
  | "learn"
  | "walks"
  | "brief"
  | "compare"
  | "extract"
  | "handover"
  | "join"
  | "library"
  | "map"
  | "marks"
  | "write";

/** One thing that is explained, with the mark it is about where there is one. */
export interface HelpLine {
  readonly text: Message;
  readonly mark: BraidSampleName | null;
}

/** A heading with what is explained under it. */
export interface HelpSection {
  readonly title: Message;
  readonly lines: readonly HelpLine[];
}

/** The page of help of a screen. */
export interface HelpContents {
  readonly title: Message;
  readonly sections: readonly HelpSection[];
}

/** A line of help, with its mark where it has one. */
export const line = (text: Message, mark: BraidSampleName | null = null): HelpLine => ({ text, mark });
/** A section of help under its heading. */
export const section = (title: Message, ...lines: readonly HelpLine[]): HelpSection => ({ title, lines });
