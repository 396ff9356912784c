import { expect, it, vi } from "vitest";
import { followActions } from "../../../src/app/follow/follow-actions.ts";
import { WalkSession } from "../../../src/app/session/index.ts";
import type { Draft } from "../../../src/core/log/index.ts";
import type { Instant, StepId, WalkId } from "../../../src/core/units/index.ts";
import { MemoryEntryStore } from "../../../src/io/store/index.ts";
import { minute, ZERO } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const walk = "walk-1" as WalkId;
const file = fileWith([step("a", "ev1", 5), step("b", "ev1", 5)]);
const marks = [
  { step: "a" as StepId, at: minute(12), decided: null },
  { step: "b" as StepId, at: minute(20), decided: null },
];

async function opened() {
  const store = new MemoryEntryStore("/devices/iv-tablet", () => minute(60));
  const at = ZERO;
  await store.append(walk, [
    { name: "walk.opened", data: { procedure: file, mode: "live" }, at, actor: "iv" },
    { name: "clock.started", data: {}, at, actor: "iv" },
  ] as Draft[]);
  const session = new WalkSession(store, walk);
  await session.follow();
  return session;
}

it("[PAP1] the session keeps all of what was entered from paper, at its times by this device's clock, and tells when", async () => {
  const session = await opened();
  const [kept, failed] = [vi.fn(), vi.fn()];
  const actions = followActions({
    session,
    now: () => minute(60),
    ownTime: (at) => (at + 2_000) as Instant,
    actor: "ev2",
    entered: vi.fn(),
    failed,
  });
  await actions.fromPaper(marks, kept);
  expect([kept.mock.calls.length, failed.mock.calls.length]).toEqual([1, 0]);
  const { ledger, ignored } = session.folded();
  expect(ignored).toEqual([]);
  for (const { step: id, at } of marks)
    expect(ledger?.steps.get(id)).toMatchObject({
      status: "done",
      finish: at + 2_000,
      completedBy: { actor: "ev2" },
    });
});

it("[PAP1] what cannot be kept is told as a failure, and never as kept", async () => {
  const session = await opened();
  vi.spyOn(session, "enter").mockRejectedValue(new Error("full"));
  const [kept, failed] = [vi.fn(), vi.fn()];
  const actions = followActions({
    session,
    now: () => minute(60),
    ownTime: (at) => at,
    actor: "iv",
    entered: vi.fn(),
    failed,
  });
  await actions.fromPaper(marks, kept);
  expect([kept.mock.calls.length, failed.mock.calls.length]).toEqual([0, 1]);
});
