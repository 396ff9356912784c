import { act, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { AskSeal } from "../../../src/app/seal/ask-seal-worker.ts";
import { SealAnswer } from "../../../src/app/seal/seal-answer.ts";
import type { SealQuestion } from "../../../src/app/seal/seal-request.ts";
import { SealSection } from "../../../src/app/seal/seal-section.tsx";
import { WalkCode } from "../../../src/app/seal/walk-code.tsx";
import type { Entry } from "../../../src/core/log/index.ts";
import { writeLines } from "../../../src/core/log/index.ts";
import { verifyLog } from "../../../src/core/seal/index.ts";
import {
  entriesOf,
  FORM,
  GROUND,
  HUB_KEY,
  keyOf,
  publicKey,
  wires,
  withNext,
} from "../../core/seal/sealed-log.ts";

/** Answers at once, in this thread, by the code that the worker runs. */
const atOnce: AskSeal = (question, readLog, { onTold, onFail }) => {
  const answer = async () => {
    const answering = new SealAnswer(question, onTold, null);
    for await (const piece of readLog()) await answering.take(piece);
    await answering.give();
  };
  answer().catch(onFail);
  return () => {};
};

/** A log in pieces, of which the first is no longer what it is. */
async function* inPieces(entries: readonly Entry[]) {
  yield writeLines(entries.slice(0, 3));
  yield null;
  for (let from = 0; from < entries.length; from += 5) yield writeLines(entries.slice(from, from + 5));
}

/** Never answers, and tells what it was asked and that it was ended. */
function never() {
  const asked: SealQuestion[] = [];
  const ended = vi.fn();
  const ask: AskSeal = (question, _, { onTold }) => {
    asked.push(question);
    onTold({ kind: "progress", done: 3, of: 12 });
    return ended;
  };
  return { ask, asked, ended };
}

/** Waits until the log was read and whoever was asked has answered. */
const settled = () => act(async () => {});

async function show(log = wires(), ask: AskSeal = atOnce) {
  const onKnown = vi.fn();
  const onSaveExtract = vi.fn();
  const section = (all = log) => (
    <SealSection
      entries={entriesOf(all)}
      readLog={() => inPieces(entriesOf(all))}
      tasks={[{ id: "out", title: "Out", steps: ["ev1-3"] }]}
      onKnown={onKnown}
      onSaveExtract={onSaveExtract}
      ask={ask}
    />
  );
  const { rerender } = render(section());
  await settled();
  return { onKnown, onSaveExtract, grow: (all: typeof log) => rerender(section(all)) };
}

const press = (name: string | RegExp) => userEvent.click(screen.getByRole("button", { name }));
const heard = () => screen.getByLabelText("The code that the other site reads");

beforeEach(() => localStorage.clear());

describe("the verdict on the review", () => {
  it("[SEL7] is one sentence, then by device with its name and role", async () => {
    localStorage.setItem("tetherline.trusted-hubs", JSON.stringify([HUB_KEY]));
    const { onKnown } = await show();
    expect(screen.getByText(/^Whole: the walk is closed/)).toBeVisible();
    expect(screen.getByText("This was a quick look: one seal a run of entries.")).toBeVisible();
    expect(screen.getByText("IV tablet, lead").closest("li")).toHaveTextContent("whole6 entries · 6 sealed");
    expect(screen.getByText("Ground, marker").closest("li")).toHaveTextContent("whole2 entries · 2 sealed");
    expect(screen.getByText("Vehicle, hub")).toBeVisible();
    expect(onKnown).toHaveBeenLastCalledWith(
      expect.objectContaining({ found: expect.objectContaining({ verdict: "whole" }), trust: [HUB_KEY] }),
    );
  });

  it("[SEL9] says what it does not prove where it stands", async () => {
    await show();
    expect(screen.getByText(/^This does not prove that an entry is true, who held the tablet/)).toBeVisible();
  });

  it("[SEL7] names what is wrong, and with which device", async () => {
    const log = wires();
    Object.assign(log.find(({ type }) => type === "tetherline.record.taken") ?? {}, { actor: "somebody" });
    await show(log);
    expect(screen.getByText(/^Broken: /)).toBeVisible();
    const device = screen.getByText("Ground, marker").closest("li");
    expect(device).toHaveTextContent("broken");
    expect(device).toHaveTextContent("Number 2: the seal does not fit the entry.");
  });

  it("[SEL7] of an old log is that it is partly vouched for, and of a device nobody admitted, who it is in the log", async () => {
    const old = wires()
      .filter(({ source }) => source === GROUND)
      .map(({ seal: _, sealkey: __, prior: ___, ...wire }) => wire);
    await show(old);
    expect(screen.getByText(/^Partly vouched for: /)).toBeVisible();
    expect(screen.getByText("t4c8zh2prn, no hub says who this is")).toBeVisible();
  });

  it("[SEL7] looks at every seal when asked to, and can be stopped", async () => {
    const { ask, asked, ended } = never();
    const { onKnown } = await show(wires(), ask);
    expect(asked.map((one) => one.kind === "verify" && one.isQuick)).toEqual([true]);
    await press("Stop looking");
    expect(ended).toHaveBeenCalledOnce();
    expect(screen.getByText("The log was not verified: looking was stopped.")).toBeVisible();
    expect(onKnown).toHaveBeenLastCalledWith({ found: null, why: "not-finished" });
    await press("Look at every seal");
    expect(screen.getByText("Every seal is looked at: 3 of 12 entries so far.")).toBeVisible();
    expect(screen.getByRole("progressbar")).toHaveAttribute("value", "3");
    expect(asked.at(-1)).toMatchObject({ isQuick: false });
  });

  it("[SEL7] says so when it cannot be had", async () => {
    const { onKnown } = await show(wires(), (_, __, { onFail }) => {
      onFail();
      return () => {};
    });
    expect(screen.getByText(/^The log could not be verified here/)).toBeVisible();
    expect(onKnown).toHaveBeenLastCalledWith({ found: null, why: "failed" });
  });

  it("[SEL7] says nothing of entries that have come since, until it looks again", async () => {
    const { grow, onKnown } = await show();
    grow(withNext(wires(), GROUND, "note.made", { text: "later" }));
    expect(screen.getByText("One entry has come since, and nothing is said of it.")).toBeVisible();
    expect(onKnown).toHaveBeenLastCalledWith({ found: null, why: "not-finished" });
    await press("Look quickly");
    expect(screen.queryByText(/has come since/)).toBeNull();
    expect(screen.getByText("Ground, marker").closest("li")).toHaveTextContent("3 entries");
  });
});

it("[SEL7] how far looking is draws nothing of the review anew", async () => {
  let told: Parameters<AskSeal>[2] | null = null;
  const { onKnown } = await show(wires(), (_, __, asker) => {
    told = asker;
    return () => {};
  });
  const before = onKnown.mock.lastCall?.[0];
  act(() => told?.onTold({ kind: "progress", done: 3, of: 12 }));
  act(() => told?.onTold({ kind: "progress", done: 6, of: 12 }));
  expect(screen.getByRole("progressbar")).toHaveAttribute("value", "6");
  expect(onKnown.mock.lastCall?.[0]).toBe(before);
});

describe("a list of entries that grows in place", () => {
  it("[SEL7] is not taken for what was looked at", async () => {
    const onKnown = vi.fn();
    const entries = entriesOf(wires());
    const section = () => (
      <SealSection
        entries={entries}
        readLog={() => inPieces(entries)}
        tasks={[]}
        onKnown={onKnown}
        onSaveExtract={vi.fn()}
        ask={atOnce}
      />
    );
    const { rerender } = render(section());
    await settled();
    expect(screen.queryByText(/has come since/)).toBeNull();
    entries.push(...entriesOf(withNext(wires(), GROUND, "note.made", { text: "later" })).slice(-1));
    rerender(section());
    expect(screen.getByText("One entry has come since, and nothing is said of it.")).toBeVisible();
    expect(onKnown).toHaveBeenLastCalledWith({ found: null, why: "not-finished" });
  });
});

describe("the hubs that are trusted", () => {
  it("[SEL4] are given by a key, kept on the device, and forgotten", async () => {
    await show();
    expect(screen.getByText(/^Partly vouched for: /)).toBeVisible();
    await userEvent.type(screen.getByLabelText("Key of a hub"), HUB_KEY);
    await press("Trust this key");
    expect(screen.getByText(/^Whole: /)).toBeVisible();
    expect(localStorage.getItem("tetherline.trusted-hubs")).toBe(JSON.stringify([HUB_KEY]));
    await press(`Forget the key ${HUB_KEY}`);
    expect(screen.getByText(/^Partly vouched for: /)).toBeVisible();
    expect(localStorage.getItem("tetherline.trusted-hubs")).toBeNull();
  });

  it("[SEL4] take no text that is no key, and the key that the log names only after somebody compared it", async () => {
    await show();
    await userEvent.type(screen.getByLabelText("Key of a hub"), "not a key");
    await press("Trust this key");
    expect(screen.getByRole("alert")).toHaveTextContent("That is no key of a hub");
    expect(screen.getByText(/This log names the hub Vehicle/)).toBeVisible();
    await press("It is the same there: trust it");
    expect(screen.getByText(/^Whole: /)).toBeVisible();
    expect(screen.queryByText(/This log names the hub/)).toBeNull();
  });

  it("[SEL4] that vouch for nobody here leave the log partly vouched for; what is stored and no key is passed by", async () => {
    localStorage.setItem("tetherline.trusted-hubs", JSON.stringify([publicKey(keyOf(4)), "nonsense", 7]));
    await show();
    expect(screen.getByText(/^Partly vouched for: /)).toBeVisible();
    expect(screen.getAllByRole("button", { name: /^Forget the key/ })).toHaveLength(1);
  });
});

describe("the voice code", () => {
  it("[SEL6] stands with the words of its letters, root and order, and a QR code", async () => {
    await show();
    const [, code = ""] = /"code":"([^"]+)"/.exec(JSON.stringify(found())) ?? [];
    for (const group of code.split("-")) expect(screen.getAllByText(group)[0]).toBeVisible();
    const first = screen.getAllByText(code.split("-")[0] ?? "")[0]?.closest("li");
    expect(first?.querySelector("span")?.textContent?.split(" ")).toHaveLength(3);
    expect(screen.getByText("The code of the 12 entries here.")).toBeVisible();
    expect(screen.getByRole("img", { name: /^QR code/ })).toBeVisible();
  });

  it("[SEL6] that another site reads is the same, the same as at a checkpoint, or differs in groups that are spelled", async () => {
    await show();
    const { code } = found();
    await userEvent.type(heard(), code.toLowerCase().replaceAll("-", " "));
    expect(screen.getByText("The same: both sites hold these 12 entries, in the same order.")).toBeVisible();
    await userEvent.clear(heard());
    await userEvent.type(heard(), FORM.code);
    expect(screen.getByText(/^The same as at a checkpoint of 11 entries/)).toBeVisible();
    await userEvent.clear(heard());
    await userEvent.type(heard(), `AAA${code.slice(3)}`);
    expect(screen.getByText(/^Not the same/)).toBeVisible();
    expect(screen.getByText(/^Group 1: here .+, there AAA \(Alfa Alfa Alfa\)$/)).toBeVisible();
    await userEvent.clear(heard());
    await userEvent.type(heard(), "AAA");
    expect(screen.getByText(/^Twelve letters/)).toBeVisible();
  });

  it("[SEL6] of a walk that goes on is worked out when it is asked for, and says what has come since", async () => {
    const { rerender } = render(
      <WalkCode entries={entriesOf(wires())} readLog={() => inPieces(entriesOf(wires()))} ask={atOnce} />,
    );
    expect(screen.queryByLabelText("The code that the other site reads")).toBeNull();
    await press("Work out the voice code");
    expect(heard()).toBeVisible();
    const grown = entriesOf(withNext(wires(), GROUND, "note.made", { text: "later" }));
    rerender(<WalkCode entries={grown} readLog={() => inPieces(grown)} ask={atOnce} />);
    expect(screen.getByText("One entry has come since, and nothing is said of it.")).toBeVisible();
    await press("Work it out again");
    expect(screen.getByText("The code of the 13 entries here.")).toBeVisible();
  });
});

it("[SEL7] a log that cannot be read from the store is said to be unverified, and an extract of it not made", async () => {
  const entries = entriesOf(wires());
  // biome-ignore lint/correctness/useYield: it is gone before anything is read.
  const readLog = async function* (): AsyncGenerator<string> {
    throw new Error("gone");
  };
  const tasks = [{ id: "out", title: "Out", steps: ["ev1-3"] }];
  const onKnown = vi.fn();
  render(
    <SealSection
      entries={entries}
      readLog={readLog}
      tasks={tasks}
      onKnown={onKnown}
      onSaveExtract={vi.fn()}
      ask={atOnce}
    />,
  );
  await settled();
  expect(onKnown).toHaveBeenLastCalledWith({ found: null, why: "failed" });
});

describe("an extract for others", () => {
  it("[SEL7] is of the kinds and the task that are chosen, and is saved", async () => {
    const { onSaveExtract } = await show();
    const form = screen.getByText("Extract for others").closest("details") as HTMLElement;
    await userEvent.click(screen.getByText("Extract for others"));
    expect(within(form).getByRole("button", { name: "Make the extract" })).toBeDisabled();
    await userEvent.click(within(form).getByLabelText("a value of a record (1)"));
    await userEvent.selectOptions(within(form).getByLabelText("Of which task"), "Out");
    await press("Make the extract");
    expect(within(form).getByText(/^The extract has one entry in full, and leaves \d+ out\.$/)).toBeVisible();
    expect(onSaveExtract).toHaveBeenCalledExactlyOnceWith(
      expect.stringMatching(/^\{"format":"tetherline.extract\/1"/),
    );
  });

  it("[SEL7] that cannot be proven is not saved, and says why", async () => {
    const { onSaveExtract } = await show(wires().filter(({ type }) => !/checkpoint/.test(String(type))));
    await userEvent.click(screen.getByText("Extract for others"));
    await userEvent.click(screen.getByLabelText("a value of a record (1)"));
    await press("Make the extract");
    expect(screen.getByText(/^The log has no checkpoint of a hub that fits it/)).toBeVisible();
    expect(onSaveExtract).not.toHaveBeenCalled();
  });
});

/** What verifying the form of the log comes to. */
function found(): { readonly code: string } {
  const { code = "" } = verifyLog(entriesOf(wires()), [], { isQuick: true }) ?? {};
  return { code };
}
