import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { fitAnswerTo } from "../../../src/app/fit/fit-answer-to.ts";
import type { FitRequest } from "../../../src/app/fit/fit-request.ts";
import type { FitSubject } from "../../../src/app/fit/index.ts";
import { FitPanel } from "../../../src/app/fit/index.ts";
import { FitsPanel } from "../../../src/app/follow/fits-panel.tsx";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

/** Answers as the worker does, in this process; `null` for a worker that cannot be loaded. */
let answerTo: typeof fitAnswerTo | null = fitAnswerTo;
let ended = 0;
class WorkerInProcess extends EventTarget {
  postMessage(request: FitRequest): void {
    const answer = answerTo;
    queueMicrotask(() =>
      this.dispatchEvent(
        answer ? new MessageEvent("message", { data: answer(structuredClone(request)) }) : new Event("error"),
      ),
    );
  }
  terminate(): void {
    ended += 1;
  }
}
beforeEach(() => {
  answerTo = fitAnswerTo;
  ended = 0;
  vi.stubGlobal("Worker", WorkerInProcess);
});

const FILE = fileWith(
  [
    task("main", [step("a", "ev1", 10), step("b", "ev2", 25)], { title: "Main work" }),
    task("photos", [step("photo", "ev1", null, { time: { low: "PT5M", likely: "PT12M", high: "PT60M" } })], {
      priority: "get-ahead",
      title: "Take photos",
      worth: 3,
    }),
    task("wipe", [step("wiping", "ev1", 10)], { priority: "get-ahead", title: "Wipe the lens" }),
    task("last", [step("end", ["ev1", "ev2"], 5)], { title: "Last", closeout: true }),
  ],
  { format: "tetherline.procedure/2", limits: { elapsed: "PT30M" } },
);
const outline = outlineOf(procedureOf(FILE));
const PLAN: FitSubject = { kind: "plan", file: FILE, start: null, light: null };

const show = (subject: FitSubject = PLAN, file = FILE) =>
  render(
    <FitPanel
      outline={outlineOf(procedureOf(file))}
      subject={subject}
      essential={outline.procedure.tasks.filter(({ id }) => id === "main")}
      onAgain={null}
      onClose={vi.fn()}
    />,
  );

const best = async () => (await screen.findAllByRole("listitem"))[0] as HTMLElement;

describe("what still fits", () => {
  it("[FIT1] goes by chance first: what likely times alone would allow is not offered", async () => {
    show();
    expect(screen.getByRole("status")).toHaveTextContent("Looking at what fits");
    expect(await screen.findByText(/^Proven best/)).toBeVisible();
    expect(within(await best()).getByRole("heading")).toHaveTextContent("Wipe the lens (worth 1)");
    expect(await best()).toHaveTextContent("Left out: Take photos");
    await userEvent.click(screen.getByRole("radio", { name: /likely times/ }));
    expect(await screen.findByRole("heading", { name: "Take photos (worth 3)" })).toBeVisible();
  });

  it("[FIT1] says by how much essential work is short, and leaves out only what the lead ticks", async () => {
    const late = { ...FILE, limits: { elapsed: "PT20M" } };
    show({ ...PLAN, file: late } as FitSubject, late);
    expect(
      await screen.findByText("Does not fit: the essential work alone is short by 10 min."),
    ).toBeVisible();
    await userEvent.click(screen.getByText("Leave essential work out"));
    await userEvent.click(screen.getByRole("checkbox", { name: "Main work" }));
    expect(await screen.findByText(/^Proven best/)).toBeVisible();
  });

  it("[FIT4] says that nothing is changed, and that people decide", async () => {
    show();
    expect(await screen.findByText(/^Nothing is changed here/)).toBeVisible();
    expect(screen.getByText(/people in charge decide/)).toBeVisible();
  });

  it("says so when it cannot be worked out", async () => {
    answerTo = null;
    show();
    expect(await screen.findByRole("alert")).toHaveTextContent("could not be worked out here");
  });

  it("ends a search that nobody waits for any more", async () => {
    const { unmount } = show();
    await screen.findByText(/^Proven best/);
    await userEvent.click(screen.getByRole("radio", { name: /likely times/ }));
    expect(ended).toBe(1);
    unmount();
    expect(ended).toBe(2);
  });
});

describe("what still fits in a walk", () => {
  it("[FIT1] is asked from the moment at which the panel is opened, and again when the reader wants", async () => {
    const log = LogWriter.started(FILE).done(["a", 10]);
    const onSplit = vi.fn();
    const at = (minutes: number) => (
      <FitsPanel
        state={walkStateAt(log.ledger, minute(minutes))}
        folded={log.folded}
        now={minute(minutes)}
        onAmend={null}
        onSplit={onSplit}
        onClose={vi.fn()}
      />
    );
    const { rerender } = render(at(12));
    expect(await screen.findByText("From PET 0:12:00, limit 0:30:00.")).toBeVisible();
    rerender(at(40));
    expect(screen.getByText("From PET 0:12:00, limit 0:30:00.")).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Ask again from now" }));
    expect(await screen.findByText("From PET 0:40:00, limit 0:30:00.")).toBeVisible();
    expect(screen.getByText(/^Does not fit: the essential work alone is short by/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Best split of the rest" }));
    expect(onSplit).toHaveBeenCalledOnce();
  });

  it("[FIT1] a log with no walk in it gives no answer, and says so", async () => {
    show({ kind: "walk", lines: "", at: minute(0) });
    expect(await screen.findByRole("alert")).toHaveTextContent("could not be worked out here");
  });
});
