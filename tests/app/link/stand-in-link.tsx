import { render } from "@testing-library/react";
import type { ReactNode } from "react";
import { vi } from "vitest";
import type { Services } from "../../../src/app/session/index.ts";
import { ServicesContext } from "../../../src/app/session/index.ts";
import type { FarHub, Follower } from "../../../src/core/link/index.ts";
import type { Duration, Instant, WalkId } from "../../../src/core/units/index.ts";
import type { LinkKeeper, LinkStatus } from "../../../src/io/link/index.ts";
import { ZERO } from "../../core/log-writer.ts";

export const walk = "walk-1" as WalkId;

/** The device that these tests are on. */
export const here = "/devices/iv-tablet";

/** So many seconds of PET. */
export const second = (seconds: number) => (ZERO + seconds * 1000) as Instant;

/** 2:10:00 of PET. */
export const NOW = second(7800);

/** A lead's link that stands, with what a test changes. */
export const linkOf = (more: Partial<LinkStatus> = {}): LinkStatus => ({
  kind: "linked",
  role: "lead",
  hubName: "Vehicle hub",
  device: here,
  key: "tied",
  unsent: 0,
  onlyHere: 0,
  heardAt: NOW,
  fetching: null,
  followers: [],
  beyond: [],
  clock: { offset: 0 as Duration, error: 20 as Duration },
  notices: [],
  words: null,
  ...more,
});

export const followerOf = (more: Partial<Follower> = {}): Follower => ({
  device: "/devices/ground",
  name: "Ground",
  role: "marker",
  present: true,
  seenUpTo: NOW,
  heardAt: NOW,
  ...more,
});

export const farHubOf = (more: Partial<FarHub> = {}): FarHub => ({
  name: "Ground hub",
  state: "linked",
  sentUpTo: NOW,
  unsent: 0,
  heardAt: NOW,
  words: null,
  ...more,
});

/** Draws something as a screen would have it, over links whose every answer is a test's. */
export function drawWithLinks(
  drawn: ReactNode,
  now: Instant = NOW,
  home: string | null = "https://hub.example",
) {
  const links = {
    home,
    status: vi.fn<LinkKeeper["status"]>(() => linkOf()),
    watch: vi.fn<LinkKeeper["watch"]>(() => () => {}),
    join: vi.fn<LinkKeeper["join"]>(async () => ({ kind: "joined", walk, role: "marker" })),
    share: vi.fn<LinkKeeper["share"]>(async () => ({ kind: "joined", walk, role: "lead" })),
    recover: vi.fn<LinkKeeper["recover"]>(async () => "not-a-member"),
    invite: vi.fn<LinkKeeper["invite"]>(),
    invitations: vi.fn<LinkKeeper["invitations"]>(async () => []),
    endInvitation: vi.fn<LinkKeeper["endInvitation"]>(async () => {}),
    withdraw: vi.fn<LinkKeeper["withdraw"]>(async () => {}),
    withdrawAll: vi.fn<LinkKeeper["withdrawAll"]>(async () => 0),
    leave: vi.fn<LinkKeeper["leave"]>(async () => {}),
    dismiss: vi.fn<LinkKeeper["dismiss"]>(),
    close: vi.fn<LinkKeeper["close"]>(),
  } satisfies LinkKeeper;
  const services = { links, now: () => now } as unknown as Services;
  render(<ServicesContext value={services}>{drawn}</ServicesContext>);
  return links;
}
