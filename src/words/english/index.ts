import { commandLineWords } from "./command-line/index.ts";
import { hubWords } from "./hub/index.ts";
import { screenWords } from "./screens/index.ts";
import { shellWords } from "./shell/index.ts";

export { english } from "./shell/index.ts";

/** All messages in English, the source of the other languages, by key. */
export const englishWords = { ...shellWords, ...screenWords, ...commandLineWords, ...hubWords } as const;
