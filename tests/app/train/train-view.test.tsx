import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { TrainView } from "../../../src/app/train/index.ts";
import type { Draft } from "../../../src/core/log/index.ts";
import { surprisesOf } from "../../../src/core/training/index.ts";
import type { Message } from "../../../src/words/index.ts";
import { message } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fire } from "../../core/training/played.ts";
import { FILE, surprise, surprisesFrom, surprisesText } from "../../core/training/surprise-builder.ts";

const slow = surprise("slow", { kind: "stretch", step: "read", factor: 3 }, { when: { step: "read" } });
const off = surprise("off", { kind: "record", step: "read", record: "turns", value: 3 });
const TEXT = surprisesText([slow, off]);

function show(log: LogWriter, props: Partial<Parameters<typeof TrainView>[0]> = {}, at = 12) {
  const onEnter = vi.fn<(drafts: readonly Draft[]) => Promise<Message | null>>().mockResolvedValue(null);
  const onText = vi.fn();
  const { folded, ledger } = log;
  render(
    <TrainView
      folded={folded}
      ledger={ledger}
      at={minute(at)}
      clock={() => minute(at)}
      isFollowedHere={false}
      may={{ fire: true, lay: false }}
      text={TEXT}
      pick={async () => []}
      onText={onText}
      onEnter={onEnter}
      anySeed={7}
      {...props}
    />,
  );
  return { onEnter, onText, user: userEvent.setup() };
}
const running = () => LogWriter.started(FILE, { mode: "rehearsal" }).done(["fetch", 10]);
const item = (title: string) =>
  screen.getByRole("heading", { level: 3, name: title }).parentElement as HTMLElement;

describe("[TRN2] the trainer's screen", () => {
  it("fires a surprise by a second tap, as the entry that brings it", async () => {
    const log = running();
    const { onEnter, user } = show(log);
    expect(item("Surprise slow")).toHaveTextContent("1.2 Do read takes 3 times as long.");
    expect(item("Surprise slow")).toHaveTextContent("Expected of IV within 5 min: that it is so call a hold");
    await user.click(screen.getByRole("button", { name: "Fire “Surprise slow”" }));
    expect(onEnter).not.toHaveBeenCalled();
    await user.click(screen.getByRole("button", { name: "Not now" }));
    await user.click(screen.getByRole("button", { name: "Fire “Surprise slow”" }));
    await user.click(screen.getByRole("button", { name: "Fire “Surprise slow” now" }));
    const [[drafts]] = onEnter.mock.calls as [[readonly Draft[]]];
    expect(drafts).toMatchObject([{ name: "surprise.fired", at: minute(12), actor: "trainer" }]);
    for (const { name, data, actor } of drafts) log.enter(name, data as never, 12, { actor });
    expect(surprisesOf(log.ledger)).toMatchObject([{ surprise: { id: "slow" }, isFired: true }]);
    expect(await screen.findByText("“Surprise slow” has been fired.")).toBeInTheDocument();
  });

  it("says when what was fired came and who showed that they noticed it, and fires it no second time", () => {
    const [, one] = surprisesFrom(slow, off);
    const log = running();
    fire(one, 11)(log);
    log
      .enter("record.taken", { step: "read", record: "turns", value: 3 }, 12)
      .enter("alert.seen", { alert: "record read turns 1" }, 13);
    show(log, {}, 14);
    expect(item("Surprise off")).toHaveTextContent(
      "Fired at PET 0:11:00. First sign 2 min after it came, by IV: saw the alert",
    );
    expect(within(item("Surprise off")).queryByRole("button")).toBeNull();
    expect(item("Surprise slow")).toHaveTextContent("Not fired.");
  });

  it("shows what the followers see: the crew, the alerts, and who has seen them", () => {
    const log = running().enter("record.taken", { step: "read", record: "turns", value: 3 }, 12);
    show(log, {}, 13);
    const sight = screen.getByRole("region", { name: "What the followers see" });
    expect(sight).toHaveTextContent("PET 0:13:00");
    expect(sight).toHaveTextContent("EV1 works · 1.2 Do read");
    expect(sight).toHaveTextContent(/Look soon.*3.*Nobody has seen it\./);
  });

  it("fires nothing before the clock starts, nor after the walk is closed", () => {
    show(LogWriter.opened(FILE, { mode: "rehearsal" }), {}, 0);
    expect(screen.queryByRole("button", { name: /^Fire/ })).toBeNull();
    expect(screen.getByText("Surprises can be fired once the clock has been started.")).toBeInTheDocument();
    show(running().enter("walk.closed", { end: "aborted" }, 11));
    expect(screen.queryByRole("button", { name: /^Fire/ })).toBeNull();
    expect(screen.getByText(/The walk is closed\. Its review tells/)).toBeInTheDocument();
  });

  it("says that it could not be kept", async () => {
    const { user } = show(running(), { onEnter: () => Promise.reject(new Error("the disk is full")) });
    await user.click(screen.getByRole("button", { name: "Fire “Surprise slow”" }));
    await user.click(screen.getByRole("button", { name: /” now$/ }));
    expect(await screen.findByText(/It could not be entered: .*the disk is full/)).toBeInTheDocument();
  });

  it("says why what was entered had no effect, such as after the closing by another tab", async () => {
    const { user } = show(running(), { onEnter: async () => message("walk/is-closed") });
    await user.click(screen.getByRole("button", { name: "Fire “Surprise slow”" }));
    await user.click(screen.getByRole("button", { name: /” now$/ }));
    expect(
      await screen.findByText(/It was entered and has no effect: the walk is closed/),
    ).toBeInTheDocument();
    expect(screen.queryByText(/has been fired/)).toBeNull();
  });

  it("on the tablet that is followed too shows none until somebody says to be the trainer, and what it keeps back", async () => {
    const { onEnter, user } = show(running(), { isFollowedHere: true, clock: () => minute(14.5) });
    expect(screen.getByText(/Until it is closed, its list.*never that it is one/)).toBeInTheDocument();
    expect(screen.queryByText("Surprise slow")).toBeNull();
    expect(screen.queryByRole("region", { name: "What the followers see" })).toBeNull();
    await user.click(screen.getByRole("button", { name: "I am the trainer: show the surprises" }));
    await user.click(screen.getByRole("button", { name: "Fire “Surprise slow”" }));
    await user.click(screen.getByRole("button", { name: /” now$/ }));
    // By the clock of the rehearsal, which has gone on since its last entry.
    expect(onEnter.mock.calls[0]?.[0]).toMatchObject([{ name: "surprise.fired", at: minute(14.5) }]);
    await user.click(screen.getByRole("button", { name: "Hide the surprises" }));
    expect(screen.queryByText("Surprise slow")).toBeNull();
  });

  it("tells a follower, and a walk that is no rehearsal, that there is nothing here", () => {
    show(running(), { may: { fire: false, lay: false } });
    expect(screen.getByText(/Surprises are for the trainer/)).toBeInTheDocument();
    expect(screen.queryByText("Surprise slow")).toBeNull();
    show(LogWriter.started(FILE));
    expect(screen.getByText(/no rehearsal, and takes no surprises/)).toBeInTheDocument();
  });
});

describe("[TRN1] surprises chosen on the screen", () => {
  const prepared = () => LogWriter.opened(FILE, { mode: "rehearsal" });
  const lay = { may: { fire: false, lay: true } };

  it("are drawn by a seed and laid before the clock starts, without telling which", async () => {
    const { onEnter, user } = show(prepared(), lay, 0);
    expect(screen.queryByText("Surprise slow")).toBeNull();
    await user.click(screen.getByRole("button", { name: "Draw and lay them" }));
    const [[drafts]] = onEnter.mock.calls as [[readonly Draft[]]];
    expect(drafts.map(({ name }) => name)).toEqual(["surprise.laid", "surprise.laid"]);
    expect(await screen.findByText("2 surprises are laid.")).toBeInTheDocument();
  });

  it("are laid once, and not after the start", () => {
    const [one] = surprisesFrom(slow);
    const log = prepared();
    fire(one, 0)(log);
    show(log, lay, 0);
    expect(screen.getByText(/This rehearsal carries 1 surprise\./)).toBeInTheDocument();
    show(running(), lay);
    expect(screen.getByText(/The clock has been started/)).toBeInTheDocument();
    expect(screen.queryByRole("button", { name: "Draw and lay them" })).toBeNull();
  });

  it("with something wrong are not offered, and each finding names its line", () => {
    const wrong = surprisesText([surprise("slow", { kind: "stretch", step: "gone", factor: 3 })]);
    show(prepared(), { ...lay, text: wrong }, 0);
    expect(screen.getByRole("list", { name: "What is wrong with the file" })).toHaveTextContent(
      /^Line \d+: There is no step "gone"\.$/,
    );
    expect(screen.queryByRole("button", { name: "Draw and lay them" })).toBeNull();
  });

  it("come from a file; one that cannot be read is told", async () => {
    const { onText, user } = show(
      prepared(),
      { ...lay, text: null, pick: async () => [{ name: "a.json", text: TEXT, problem: null }] as never },
      0,
    );
    expect(screen.getByText(/No surprises come with “Trial”/)).toBeInTheDocument();
    await user.click(screen.getByRole("button", { name: "Choose a file…" }));
    expect(onText).toHaveBeenCalledWith(TEXT);
  });
});
