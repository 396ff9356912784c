import { render, screen } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { useMissingWalk } from "../../../src/app/link/index.ts";
import type { SoughtWalk } from "../../../src/app/link/use-missing-walk.ts";
import { ServicesContext } from "../../../src/app/session/index.ts";
import type { LinkStatus, Recovery } from "../../../src/io/link/index.ts";
import { linkOf, walk } from "./stand-in-link.tsx";

const ALONE: Partial<LinkStatus> = { kind: "alone", role: null, hubName: null };

function Missing(sought: Partial<SoughtWalk>) {
  const { said, mayJoin } = useMissingWalk({ walk, isRead: true, problem: null, isThere: false, ...sought });
  return <p data-join={mayJoin}>{said}</p>;
}

function draw(answers: readonly Recovery[], link = ALONE, sought: Partial<SoughtWalk> = {}) {
  const recover = vi.fn(async () => answers[Math.min(recover.mock.calls.length, answers.length) - 1]);
  const status = linkOf(link);
  const links = { recover, status: () => status, watch: () => () => {} };
  render(
    <ServicesContext value={{ links } as never}>
      <Missing {...sought} />
    </ServicesContext>,
  );
  return recover;
}

const said = (words: RegExp) =>
  vi.waitFor(() => expect(screen.getByText(words)).toBeVisible(), { timeout: 20_000 });

beforeEach(() => {
  vi.useFakeTimers({ shouldAdvanceTime: true });
});
afterEach(() => vi.useRealTimers());

describe("[LINK] a walk that this device has not got", () => {
  it.each<[Recovery, RegExp, string]>([
    ["back", /^Fetching the walk from the hub…$/, "false"],
    ["not-a-member", /^There is no such walk .* join the walk with a new code/, "true"],
    ["other-device", /^There is no such walk .* has begun other walks since/, "true"],
  ])("is asked for at the hub once, and what came of it said: %s", async (outcome, words, mayJoin) => {
    const recover = draw([outcome]);
    expect(screen.getByText(/The hub is asked for it…$/)).toBeVisible();
    await said(words);
    expect(screen.getByText(words).dataset["join"]).toBe(mayJoin);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(recover).toHaveBeenCalledExactlyOnceWith(walk);
  });

  it("is asked for again every ten seconds while no hub answers", async () => {
    const recover = draw(["unreachable", "unreachable", "not-a-member"]);
    await said(/no hub answers from which it could come back/);
    await vi.advanceTimersByTimeAsync(20_000);
    await said(/join the walk with a new code/);
    expect(recover).toHaveBeenCalledTimes(3);
  });

  it("is not asked for while it is read, is there, is linked, or could not be read", () => {
    const fetching = { come: 3, of: 8 };
    for (const [link, sought] of [
      [ALONE, { isRead: false }],
      [ALONE, { isThere: true }],
      [ALONE, { problem: "The store is closed." }],
      [{ kind: "linked", fetching }, {}],
    ] as const) {
      expect(draw(["back"], link, sought)).not.toHaveBeenCalled();
    }
    expect(screen.getByText("The store is closed.")).toBeVisible();
    expect(screen.getByText("Fetching the walk from the hub: 3 of 8 entries…")).toBeVisible();
  });
});
