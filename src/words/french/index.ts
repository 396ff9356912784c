import type { Catalogue } from "../language-in-use.ts";
import { commandLineWords } from "./command-line/index.ts";
import { hubWords } from "./hub/index.ts";
import { screenWords } from "./screens/index.ts";
import { shellWords } from "./shell/index.ts";

/** All messages in French, by key. */
export const frenchWords: Catalogue = { ...shellWords, ...screenWords, ...commandLineWords, ...hubWords };
