import type { Catalogue } from "../language-in-use.ts";
import { commandLineWords } from "./command-line/index.ts";
import { hubWords } from "./hub/index.ts";
import { screenWords } from "./screens/index.ts";
import { shellWords } from "./shell/index.ts";

/** All messages in Arabic, by key. */
export const arabicWords: Catalogue = { ...shellWords, ...screenWords, ...commandLineWords, ...hubWords };
