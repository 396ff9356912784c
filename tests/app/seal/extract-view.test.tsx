import { render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { AskSeal } from "../../../src/app/seal/ask-seal-worker.ts";
import { ExtractView } from "../../../src/app/seal/extract-view.tsx";
import { SealAnswer } from "../../../src/app/seal/seal-answer.ts";
import { takeIn } from "../../../src/app/shelf/take-in.ts";
import { extractOf, verifyExtract, writeExtract } from "../../../src/core/seal/index.ts";
import { openStore } from "../../../src/io/store/index.ts";
import { entriesOf, HUB_KEY, wires } from "../../core/seal/sealed-log.ts";
import { freshIndexedDb, standing } from "../../io/store/stand-ins.ts";

/** Answers in this thread, by the code that the worker runs. */
const here: AskSeal = (question, readLog, { onTold, onFail }) => {
  const answer = async () => {
    const answering = new SealAnswer(question, onTold, null);
    for await (const piece of readLog()) await answering.take(piece);
    await answering.give();
  };
  answer().catch(onFail);
  return () => {};
};

const made = extractOf(entriesOf(wires()), ({ wire }) => wire.type === "tetherline.record.taken");
if (made.kind !== "made") throw new Error(made.kind);
const TEXT = writeExtract(made.extract);
const { code = "" } = verifyExtract(made.extract, [])?.checkpoint ?? {};

const show = async (text = TEXT, ask = here) => {
  render(<ExtractView text={text} ask={ask} />);
  await waitFor(() => expect(screen.queryByText(/^A quick look/)).toBeNull());
};

/** The file with the lines of its records changed. */
const withRecords = (by: (line: string) => string): string =>
  TEXT.split("\n")
    .map((line) => (line.includes("record.taken") ? by(line) : line))
    .join("\n");

beforeEach(() => localStorage.clear());

describe("the file of an extract", () => {
  it("[SEL7] [SEL9] says what it is worth, of which walk, how many of how many, and what it does not prove", async () => {
    localStorage.setItem("tetherline.trusted-hubs", JSON.stringify([HUB_KEY]));
    await show();
    expect(screen.getByText(/^Whole: every entry in this extract/)).toBeVisible();
    expect(
      screen.getByText(/^An extract of .+: \d+ entries in full, proven by a checkpoint of 11\.$/),
    ).toBeVisible();
    expect(screen.getByText(/^This does not prove what the entries that were left out say/)).toBeVisible();
    expect(screen.getAllByText(/^Left out of .+: \d/).length).toBeGreaterThan(0);
  });

  it("[SEL7] shows what each entry says, who entered it and when, those of hubs apart", async () => {
    await show();
    const [first] = screen.getAllByText("a value of a record");
    const entry = first?.closest("li") as HTMLElement;
    const [record] = wires().filter(({ type }) => type === "tetherline.record.taken");
    const data = record?.["data"] as Record<string, unknown>;
    for (const name of Object.keys(data)) expect(within(entry).getByText(name)).toBeVisible();
    expect(entry).toHaveTextContent(String(data["step"]));
    expect(entry).toHaveTextContent(`number ${Number(record?.["sequence"])}`);
    expect(screen.getByText(/^What hubs entered \(\d+\)$/)).toBeVisible();
  });

  it("[SEL4] [SEL6] takes the key of a hub and the code that another site reads", async () => {
    await show();
    expect(screen.getByText(/^Partly vouched for/)).toBeVisible();
    await userEvent.type(screen.getByLabelText("Key of a hub"), HUB_KEY);
    await userEvent.click(screen.getByRole("button", { name: "Trust this key" }));
    expect(await screen.findByText(/^Whole: /)).toBeVisible();
    const heard = screen.getByLabelText("The code that the other site reads");
    await userEvent.type(heard, code.toLowerCase());
    expect(screen.getByText("The same: the other site holds what the checkpoint held.")).toBeVisible();
    await userEvent.clear(heard);
    await userEvent.type(heard, `AAA${code.slice(3)}`);
    expect(screen.getByText(/^Not the same/)).toBeVisible();
  });

  it("[SEL7] with an entry that was changed is broken, and says which", async () => {
    await show(withRecords((line) => line.replace('"actor":"', '"actor":"x')));
    expect(screen.getByText(/^Broken: an entry was changed or put in/)).toBeVisible();
    expect(screen.getByText(/^Number \d+: the seal does not fit the entry\.$/)).toBeVisible();
  });

  it("[SEL7] that is spoiled, or has nothing in it, says what could not be read", async () => {
    await show(withRecords((line) => line.slice(0, -9)));
    expect(screen.getByText(/^Line \d+ was left out: /)).toBeVisible();
    expect(screen.getByText(/^An extract of /)).toBeVisible();
  });

  it.each([
    [
      "no head",
      '{"format":"tetherline.extract/1"}\n',
      "Line 1 was left out: does not say what it is an extract of.",
    ],
    ["no entries", TEXT.split("\n")[0] ?? "", null],
  ])("[SEL7] with %s is no record of anything", async (_, text, line) => {
    await show(text);
    expect(screen.getByText("No entry of it can be read.")).toBeVisible();
    if (line) expect(screen.getByText(line)).toBeVisible();
  });

  it("[SEL7] that cannot be looked at says so", async () => {
    await show(TEXT, (_, __, { onFail }) => {
      queueMicrotask(onFail);
      return () => {};
    });
    expect(screen.getByRole("alert")).toHaveTextContent("could not be verified here");
  });
});

it("[SEL7] an extract that the shelf is given is opened, and nothing of it is taken in", async () => {
  const store = await openStore({ now: standing, indexedDb: freshIndexedDb() });
  const open = vi.fn();
  expect(await takeIn(store, [{ name: "public.extract.jsonl", text: TEXT, problem: null }], open)).toEqual([
    "public.extract.jsonl: It is an extract of a log: it is shown, and nothing of it is taken in.",
  ]);
  expect(open).toHaveBeenCalledExactlyOnceWith(expect.stringMatching(/^\/extract\/file-\d+$/));
  expect(await store.log.walks()).toEqual([]);
  store.close();
});
