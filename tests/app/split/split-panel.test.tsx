import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { SplitRestPanel } from "../../../src/app/follow/split-rest-panel.tsx";
import { SplitPanel } from "../../../src/app/split/index.ts";
import { provenAnswerTo, splitAnswersTo } from "../../../src/app/split/split-answers-to.ts";
import type { SplitFound, SplitRequest } from "../../../src/app/split/split-request.ts";
import { loadSolver } from "../../../src/cli/load-solver.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

/** What the worker answers, in this process; `null` for a worker that cannot be loaded. */
let answersTo: ((request: SplitRequest) => Iterable<SplitFound>) | null = splitAnswersTo;
let ended = 0;
/** What the worker says that proves; `null` while it is at it. */
let proves: ((request: SplitRequest) => SplitFound | "no-solver") | null = null;
class WorkerInProcess extends EventTarget {
  readonly #isProof: boolean;
  constructor(address: URL) {
    super();
    this.#isProof = address.href.includes("proof-worker");
  }
  postMessage(request: SplitRequest): void {
    if (this.#isProof) {
      const said = proves?.(structuredClone(request));
      if (said) queueMicrotask(() => this.dispatchEvent(new MessageEvent("message", { data: said })));
      return;
    }
    const answers = answersTo;
    queueMicrotask(() => {
      if (!answers) this.dispatchEvent(new Event("error"));
      else
        for (const data of answers(structuredClone(request)))
          this.dispatchEvent(new MessageEvent("message", { data }));
    });
  }
  terminate(): void {
    ended += 1;
  }
}
beforeEach(() => {
  answersTo = splitAnswersTo;
  proves = null;
  ended = 0;
  vi.stubGlobal("Worker", WorkerInProcess);
});

const FILE = fileWith(
  [
    task("wash", [step("washing", "ev1", 20)], { title: "Wash", order: "free" }),
    task("wire", [step("wiring", "ev1", 30, { or: [["ev2"]] })], { title: "Wire" }),
    task("last", [step("end", ["ev1", "ev2"], 5)], { closeout: true }),
  ],
  { format: "tetherline.procedure/2" },
);

const show = (file: ProcedureFile = FILE) => {
  const onSave = vi.fn<(changes: readonly Change[]) => void>();
  const onClose = vi.fn();
  render(
    <SplitPanel
      outline={outlineOf(procedureOf(file))}
      title="Best split"
      request={{ subject: { kind: "plan", file, start: null, light: null } }}
      takeUp={{ says: "Save as revision B", onTake: onSave }}
      how="By likely times."
      onClose={onClose}
    />,
  );
  return { onSave, onClose };
};

describe("the best split", () => {
  it("[FIT3] shows the plan as it is, how good a better one is, each change with why, and what it costs", async () => {
    show();
    expect(screen.getByRole("status")).toHaveTextContent("Looking for a better split");
    expect(
      await screen.findByText(
        "Proven best: finish 0:35, 20 min earlier. No split of this work is complete earlier.",
      ),
    ).toBeVisible();
    expect(screen.getByText("The plan as it is: finish 0:55.")).toBeVisible();
    const [change] = screen.getAllByRole("listitem");
    expect(change).toHaveTextContent("Step 2.1 “Do wiring” is done by EV2 instead of EV1.");
    expect(change).toHaveTextContent("Without this one the plan would be complete 20 min later.");
    expect(screen.getByText("1 step changes hands.")).toBeVisible();
    expect(
      screen.getByText(/^The finish of the plan hangs on a chain of 3 steps from 1.1 to 3.1/),
    ).toBeVisible();
  });

  it("[FIT4] offers to keep the plan first, and saves the changes only when asked to", async () => {
    const { onSave, onClose } = show();
    const keep = await screen.findByRole("button", { name: "Keep the plan" });
    const save = screen.getByRole("button", { name: "Save as revision B" });
    expect(keep.compareDocumentPosition(save)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    expect(onSave).not.toHaveBeenCalled();
    await userEvent.click(save);
    const changed = applyChanges(FILE, onSave.mock.calls[0]?.[0] ?? []);
    const plan = changed.file && planOf(outlineOf(procedureOf(changed.file)));
    expect(plan?.timeline?.course.finish).toBe(35 * 60_000);
    await userEvent.click(keep);
    expect(onClose).toHaveBeenCalledOnce();
  });

  it("[FIT3] shows the best so far while it looks on, and keeps it when it is stopped", async () => {
    answersTo = (request) => [...splitAnswersTo(request)].map((found) => ({ ...found, isLast: false }));
    show();
    await userEvent.click(await screen.findByRole("button", { name: "Stop looking" }));
    expect(ended).toBe(1);
    expect(screen.queryByRole("button", { name: "Stop looking" })).toBeNull();
    expect(screen.getByRole("button", { name: "Save as revision B" })).toBeVisible();
  });

  it("[FIT3] has nothing to save where the plan is kept", async () => {
    show(fileWith([step("a", "ev1", 10)]));
    expect(await screen.findByText(/^There is nothing to choose/)).toBeVisible();
    expect(screen.queryByRole("button", { name: /^Save/ })).toBeNull();
    expect(screen.queryByRole("list")).toBeNull();
  });

  describe("that is not proven", () => {
    /** The answer with a finish that nobody has shown to be the best. */
    const open = (found: SplitFound): SplitFound => ({
      ...found,
      isLast: true,
      answer: found.answer && { ...found.answer, status: "best-found", isProven: false },
    });
    beforeEach(() => {
      answersTo = (request) => [...splitAnswersTo(request)].map(open);
    });

    it("[FIT3] is proven a second time when that is asked for", async () => {
      const solver = await loadSolver();
      proves = (request) => {
        const found = provenAnswerTo(request, solver);
        return {
          ...found,
          answer: found.answer && { ...found.answer, second: { status: "proven", choices: 3 } },
        };
      };
      show();
      await userEvent.click(await screen.findByRole("button", { name: "Prove it" }));
      expect(await screen.findByText(/^Proven best: finish 0:35/)).toBeVisible();
      expect(screen.getByText("Shown a second time by a program (yes-or-no choices: 3).")).toBeVisible();
      expect(screen.queryByRole("button", { name: "Prove it" })).toBeNull();
    });

    it("[FIT3] keeps what was found while it is being proven, and when that is given up", async () => {
      show();
      await userEvent.click(await screen.findByRole("button", { name: "Prove it" }));
      expect(screen.getByText("Looking for a proof …")).toBeVisible();
      expect(screen.getByText(/^Best found: finish 0:35/)).toBeVisible();
      await userEvent.click(screen.getByRole("button", { name: "Stop looking" }));
      expect(ended).toBe(1);
      expect(screen.getByRole("button", { name: "Prove it" })).toBeVisible();
      expect(screen.getByText(/^Best found: finish 0:35/)).toBeVisible();
    });

    it("[FIT3] says when what proves it is not on the device, and may be asked again", async () => {
      proves = () => "no-solver";
      show();
      await userEvent.click(await screen.findByRole("button", { name: "Prove it" }));
      expect(await screen.findByText(/^The proof needs a part of the app/)).toBeVisible();
      expect(screen.getByRole("button", { name: "Prove it" })).toBeVisible();
    });
  });

  it("says so when it cannot look", async () => {
    answersTo = null;
    show();
    expect(within(screen.getByRole("dialog")).queryByRole("status")).not.toBeNull();
    expect(await screen.findByRole("alert")).toHaveTextContent("could not be looked for here");
  });
});

describe("the best split of the rest of a walk", () => {
  const walk = () => {
    const log = LogWriter.started(FILE);
    const onAmend = vi.fn<(changes: readonly Change[]) => void>();
    const onClose = vi.fn();
    const panel = (minutes: number, mayAmend = true) => (
      <SplitRestPanel
        state={walkStateAt(log.ledger, minute(minutes))}
        folded={log.folded}
        now={minute(minutes)}
        onAmend={mayAmend ? onAmend : null}
        onClose={onClose}
      />
    );
    return { log, onAmend, onClose, panel };
  };

  it("[FIT3] [FIT4] holds as of when it was asked, offers to keep the plan first, and opens an amendment when taken up", async () => {
    const { onAmend, onClose, panel } = walk();
    render(panel(6));
    expect(await screen.findByText("The walk as it was at PET 0:06:00.")).toBeVisible();
    expect(await screen.findByText(/^Proven best: finish 0:41, 14 min earlier/)).toBeVisible();
    const keep = screen.getByRole("button", { name: "Keep the plan" });
    const take = screen.getByRole("button", { name: "See what the plan would come to with this" });
    expect(keep.compareDocumentPosition(take)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    expect(onAmend).not.toHaveBeenCalled();
    await userEvent.click(take);
    expect(onAmend).toHaveBeenCalledWith([{ change: "wiring", set: { by: ["ev2"], or: [["ev1"]] } }]);
    await userEvent.click(keep);
    expect(onClose).toHaveBeenCalledOnce();
  });

  it("[FIT4] shows the answer to whoever may not amend, and offers no amendment", async () => {
    const { panel } = walk();
    render(panel(6, false));
    expect(await screen.findByText(/^Proven best/)).toBeVisible();
    expect(screen.queryByRole("button", { name: /^See what/ })).toBeNull();
  });

  it("[FIT3] says when the walk has gone on meanwhile, and looks again with one tap", async () => {
    const { log, panel } = walk();
    const { rerender } = render(panel(6));
    expect(await screen.findByText(/^Proven best/)).toBeVisible();
    expect(screen.queryByText(/^Something has been entered since/)).toBeNull();
    log.done(["washing", 9]);
    rerender(panel(10));
    expect(screen.getByText("The walk as it was at PET 0:06:00.")).toBeVisible();
    expect(screen.getByText(/^Something has been entered since/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Ask again from now" }));
    expect(await screen.findByText("The walk as it was at PET 0:10:00.")).toBeVisible();
    expect(screen.queryByText(/^Something has been entered since/)).toBeNull();
    // By now the other step is in work as well.
    expect(await screen.findByText(/^There is nothing to choose/)).toBeVisible();
  });
});
