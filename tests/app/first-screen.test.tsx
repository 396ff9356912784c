import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { type ReactNode, useState } from "react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { FirstScreen } from "../../src/app/first-screen.tsx";
import type { Services } from "../../src/app/session/index.ts";
import { NO_NEWS, ShelfNewsContext } from "../../src/app/shelf/index.ts";
import type { Instant, WalkId } from "../../src/core/units/index.ts";
import type { WalkCard } from "../../src/io/store/index.ts";
import { words } from "../../src/words/index.ts";

const NOW = Date.UTC(2031, 3, 2, 9, 36) as Instant;

const card = (walk: string, more: Partial<WalkCard> = {}): WalkCard => ({
  walk: walk as WalkId,
  procedure: "trial",
  revision: null,
  title: `Walk ${walk}`,
  mode: "live",
  openedAt: NOW,
  phase: "running",
  lastAt: NOW,
  entries: 3,
  ...more,
});

/** As much of a device's services as the shelf asks for. */
function servicesWith(walks: readonly WalkCard[], fails = false): Services {
  const nothing = () => {};
  const log = {
    walks: async () => {
      if (fails) throw new Error("the disk is full");
      return walks;
    },
    watchWalks: () => nothing,
    watchStatus: () => nothing,
    status: () => DURABLE,
  };
  const store = {
    log,
    shelf: { procedures: async () => [], watchProcedures: () => nothing },
    hasManuscripts: async () => false,
  };
  return { store, links: {}, now: () => NOW } as unknown as Services;
}

const DURABLE = { kind: "durable" } as const;

/** A promise that is let come true, or not. */
function pending<Value>() {
  let resolve!: (value: Value) => void;
  let reject!: (error: unknown) => void;
  const promise = new Promise<Value>((one, other) => {
    [resolve, reject] = [one, other];
  });
  return { promise, resolve, reject };
}

/** The first screen with services that come when they are let. */
function begin() {
  const { promise, ...opened } = pending<Services>();
  const show = vi.fn();
  const drawn = render(
    <WithNews>
      <FirstScreen services={() => promise} onShow={show} />
    </WithNews>,
  );
  return { ...drawn, opened, show };
}

function WithNews({ children }: { readonly children: ReactNode }) {
  return <ShelfNewsContext value={useState(NO_NEWS)}>{children}</ShelfNewsContext>;
}

const walksListed = () => within(screen.getByRole("region", { name: "Walks" }));

afterEach(() => localStorage.clear());

describe("the first screen", () => {
  it("is drawn, and can be tapped, before the store is open", async () => {
    const { show, opened } = begin();
    await userEvent.click(screen.getByRole("button", { name: words("shelf/write-new") }));
    expect(show).toHaveBeenCalledExactlyOnceWith("/write");
    opened.resolve(servicesWith([]));
    expect(await screen.findByText(words("shelf/does-not-say"))).toBeVisible();
  });

  it("lists a walk from the time before without its facts, in its place, until the store was read", async () => {
    const before = begin();
    before.opened.resolve(servicesWith([card("a", { phase: "closed" }), card("b")]));
    expect(await screen.findByText(/^running$/i)).toBeVisible();
    before.unmount();

    const { opened, show } = begin();
    const titles = () =>
      walksListed()
        .getAllByRole("heading", { level: 3 })
        .map(({ textContent }) => textContent);
    expect(titles()).toEqual(["Walk b", "Walk a"]);
    expect(screen.queryByText(/^running$/i)).toBeNull();
    expect(walksListed().getAllByText("Listed here last time, not read yet.")).toHaveLength(2);
    await userEvent.click(walksListed().getByRole("button", { name: "Go on" }));
    expect(show).toHaveBeenCalledExactlyOnceWith("/follow/b");

    opened.resolve(servicesWith([card("b"), card("a", { phase: "closed" })]));
    expect(await screen.findByText(/^running$/i)).toBeVisible();
    expect(titles()).toEqual(["Walk b", "Walk a"]);
    expect(screen.queryByText(/not read yet/)).toBeNull();
  });

  it("takes off what is no longer in the store", async () => {
    const before = begin();
    before.opened.resolve(servicesWith([card("a")]));
    expect(await screen.findByText(/^running$/i)).toBeVisible();
    before.unmount();
    const { opened } = begin();
    expect(screen.getByText("Walk a")).toBeVisible();
    opened.resolve(servicesWith([]));
    await vi.waitFor(() => expect(screen.queryByText("Walk a")).toBeNull());
  });

  it("says why the store could not be read, and what was listed stays told as not read", async () => {
    const before = begin();
    before.opened.resolve(servicesWith([card("a")]));
    expect(await screen.findByText(/^running$/i)).toBeVisible();
    before.unmount();
    const { opened } = begin();
    opened.resolve(servicesWith([], true));
    expect(await screen.findByText(/the disk is full/)).toBeVisible();
    expect(screen.getByText("Listed here last time, not read yet.")).toBeVisible();
  });

  it("says so when the part that opens the store cannot be loaded, also to whoever tapped before", async () => {
    const { opened } = begin();
    opened.reject(new TypeError("no network"));
    expect(await screen.findByText(/no network/)).toBeVisible();
  });
});
