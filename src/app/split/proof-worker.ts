import { english, shellWords } from "../../words/english/shell/index.ts";
import { speak } from "../../words/index.ts";
import { loadSolver } from "./load-solver.ts";
import { provenAnswerTo } from "./split-answers-to.ts";
import type { SplitRequest } from "./split-request.ts";

// A translation that is added has a text, in the language in use.
speak(english, shellWords);

self.addEventListener("message", ({ data }: MessageEvent<SplitRequest>) => {
  void loadSolver().then(
    (solver) => self.postMessage(provenAnswerTo(data, solver)),
    () => self.postMessage("no-solver"),
  );
});
