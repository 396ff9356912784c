import { cleanup, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { NoticeStrip } from "../../../src/app/follow/notice-strip.tsx";
import { BeyondStrip, LinkPanel, useNotices } from "../../../src/app/link/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { later } from "../../../src/core/units/index.ts";
import type { Folded } from "../../../src/core/walk/index.ts";
import type { LinkStatus } from "../../../src/io/link/index.ts";
import { inWords, message } from "../../../src/words/index.ts";
import { LogWriter, ZERO } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";
import { drawWithLinks, farHubOf, followerOf, here, linkOf, NOW, second, walk } from "./stand-in-link.tsx";

const button = (name: string | RegExp) => screen.queryByRole("button", { name });
const drawPanel = (more: Partial<LinkStatus>) =>
  drawWithLinks(<LinkPanel walk={walk} link={linkOf(more)} petZero={ZERO} now={NOW} onClose={vi.fn()} />);
const factOf = (name: string) => screen.getByText(name, { selector: "dt" }).nextElementSibling?.textContent;

function Told({ folded, link }: { readonly folded: Folded; readonly link: LinkStatus }) {
  const { notices, putAway } = useNotices(walk, folded, link);
  return <NoticeStrip notices={notices} onPutAway={putAway} />;
}

describe("[LINK] the link panel", () => {
  it("lets a lead see how the link stands, take a follower off and let others in", async () => {
    const followers = [followerOf({ device: here, name: "Inside", role: "lead" }), followerOf()];
    const links = drawPanel({ followers, unsent: 2 });
    expect(factOf("Link")).toBe("linked");
    expect(factOf("Hub")).toBe("Vehicle hub");
    expect(factOf("This tablet")).toBe("lead");
    expect(factOf("Entries")).toBe("2 not sent");
    expect(factOf("Last word")).toBe("heard 0 s ago");
    expect(button("Make a code")).toBeVisible();
    expect(button(/^Take Inside off/)).toBeNull();
    expect(button(/^Take everybody off/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Take Ground off the walk" }));
    expect(links.withdraw).toHaveBeenCalledExactlyOnceWith(walk, "/devices/ground");
    expect(screen.getByText(/2 entries have not been sent yet/)).toBeVisible();
  });

  it.each(["marker", "watcher"] as const)(
    "lets a %s see who follows, and nobody be let in or taken off",
    (role) => {
      drawPanel({
        role,
        followers: [followerOf({ device: here, name: "Inside", role }), followerOf({ name: "Other" })],
      });
      expect(factOf("This tablet")).toBe(role);
      expect(screen.getByText("Other")).toBeVisible();
      expect(button(/everybody/)).toBeNull();
      expect(button("Make a code")).toBeNull();
      expect(button(/off the walk/)).toBeNull();
      expect(button("Leave the hub")).toBeVisible();
    },
  );

  it("says why a link ended, and offers a lead nothing that the hub would refuse", () => {
    drawPanel({
      kind: "ended",
      words: "You were taken off: join the walk again.",
      followers: [followerOf()],
    });
    expect(factOf("Link")).toBe("ended");
    expect(screen.getByText("You were taken off: join the walk again.")).toBeVisible();
    expect(button("Make a code")).toBeNull();
    expect(button(/off the walk/)).toBeNull();
  });

  it("says how long nothing was heard while it tries to reach the hub", () => {
    drawPanel({ kind: "linking", heardAt: second(7800 - 300), unsent: 1 });
    expect(factOf("Link")).toBe("linking: trying to reach the hub");
    expect(factOf("Last word")).toBe("heard 5 min ago");
    expect(screen.getByText(/1 entry has not been sent yet/)).toBeVisible();
  });

  it.each([
    [0, 20, /^agrees with the hub’s \(±\s0\.02\ss\)$/],
    [-15, 20, /^agrees with/],
    [-3500, 20, /^3\.5 s ahead of the hub’s \(±\s0\.02\ss\)$/],
    [3500, 20, /^3\.5 s behind the hub’s/],
    [-600_000, 500, /^10 min ahead of the hub’s \(±\s0\.50\ss\)$/],
    [86_400_000, 500, /^24\.0 h behind the hub’s/],
  ])("says how the clock here stands: %d ms, within %d ms", (offset, error, words) => {
    drawPanel({ clock: { offset: offset as Duration, error: error as Duration } });
    expect(factOf("Clock here")).toMatch(words);
  });

  it("[SEL3] says whether this tablet has a key, and why not and what follows", () => {
    drawPanel({ key: "tied" });
    expect(screen.getByText(/no other device can take this tablet’s place/)).toBeVisible();
    cleanup();
    for (const [key, why] of [
      ["insecure", /not opened over TLS: if this tablet leaves/],
      ["unsupported", /this browser cannot make one/],
      ["not-kept", /could not keep one/],
    ] as const) {
      drawPanel({ key });
      expect(screen.getByText(why)).toBeVisible();
      cleanup();
    }
    drawPanel({ key: null });
    expect(screen.queryByText("Its key")).toBeNull();
  });

  it("tells of entries that are only on this tablet, and only then", () => {
    drawPanel({ onlyHere: 3 });
    expect(screen.getByText(/^3 entries of other devices are only on this tablet/)).toBeVisible();
  });

  it("tells nothing of entries that are only here when there are none", () => {
    drawPanel({});
    expect(screen.queryByText(/only on this tablet/)).toBeNull();
  });

  it("says that a follower could not be taken off, or the hub not be left", async () => {
    const links = drawPanel({ followers: [followerOf()] });
    links.withdraw.mockRejectedValueOnce(new Error("The hub cannot be reached."));
    await userEvent.click(screen.getByRole("button", { name: /^Take Ground off/ }));
    expect(await screen.findByRole("alert")).toHaveTextContent(
      /^That did not work: The hub cannot be reached\.$/,
    );
    await userEvent.click(screen.getByRole("button", { name: "Leave the hub" }));
    expect(links.leave).toHaveBeenCalledExactlyOnceWith(walk);
    expect(screen.queryByRole("alert")).toBeNull();
  });

  it("takes everybody else off and ends all codes once a lead has said so twice, and tells when it did not work", async () => {
    const links = drawPanel({ followers: [followerOf({ device: here }), followerOf()] });
    const press = (name: string) => userEvent.click(screen.getByRole("button", { name }));
    await press("Take everybody off …");
    expect(screen.getByText(/1 other device or hub goes on alone/)).toBeVisible();
    await press("Keep them");
    expect(links.withdrawAll).not.toHaveBeenCalled();
    await press("Take everybody off …");
    links.withdrawAll.mockRejectedValueOnce(new Error("The hub cannot be reached."));
    await press("Take everybody off");
    expect(await screen.findByRole("alert")).toHaveTextContent(/The hub cannot be reached/);
    links.withdrawAll.mockResolvedValueOnce(3);
    links.invitations.mockClear();
    await press("Take everybody off");
    expect(await screen.findByText("3 devices were taken off. All codes have ended.")).toBeVisible();
    expect(links.withdrawAll).toHaveBeenLastCalledWith(walk);
    expect(links.invitations).toHaveBeenCalled();
  });

  it("lists the codes by which tablets can still join, and ends them", async () => {
    const links = drawPanel({});
    await waitFor(() => expect(links.invitations).toHaveBeenCalledOnce());
    expect(screen.queryByText("Codes that are still good")).toBeNull();
    const expires = later(NOW, 600_000 as Duration);
    links.invite.mockResolvedValueOnce({
      code: "ABCDEFGHJ",
      role: "marker",
      devices: 3,
      expires,
      url: "http://h/",
    });
    const kept = { name: "one", role: "marker", expires, left: 3 } as const;
    links.invitations.mockResolvedValueOnce([
      kept,
      { ...kept, name: "over", expires: NOW },
      { ...kept, name: "used", left: 0 },
    ]);
    await userEvent.click(screen.getByRole("button", { name: "Make a code" }));
    expect(await screen.findByText(/^As marker: 3 tablets more, for another 10 min\./)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "End this code" }));
    expect(links.endInvitation).toHaveBeenCalledExactlyOnceWith(walk, "one");
    expect(screen.queryByText("Codes that are still good")).toBeNull();
  });

  it("says that the hub did not tell of codes, or end one", async () => {
    const links = drawPanel({});
    await waitFor(() => expect(links.invitations).toHaveBeenCalledOnce());
    links.invite.mockResolvedValueOnce({
      code: "ABCDEFGHJ",
      role: "marker",
      devices: 1,
      expires: later(NOW, 600_000 as Duration),
      url: "http://h/",
    });
    links.invitations.mockRejectedValueOnce(new Error("The hub cannot be reached."));
    await userEvent.click(screen.getByRole("button", { name: "Make a code" }));
    expect(await screen.findByRole("alert")).toHaveTextContent(
      /^The hub did not say which codes are still good: /,
    );
  });

  it("offers to share a walk that is on this device alone", () => {
    drawPanel({ kind: "alone", role: null, hubName: null });
    expect(button("Share this walk")).toBeVisible();
    expect(button("Leave the hub")).toBeNull();
  });

  it("lists those who are here first, each with role and how far it has read", () => {
    drawPanel({
      role: "watcher",
      followers: [
        followerOf({ device: "/devices/b", name: "Backup", present: false, seenUpTo: second(7620) }),
        followerOf({ device: "/devices/w", name: "Window", role: "watcher", seenUpTo: null }),
        followerOf({ device: here, name: "Ground" }),
        followerOf({ device: "/hubs/far", name: "", role: "relay" }),
      ],
    });
    const items = screen.getAllByRole("listitem").map(({ textContent }) => textContent);
    expect(items).toEqual([
      "unnamed another hubhas seen all",
      "Ground marker · this tablethas seen all",
      "Window watcheris reading",
      "Backup markeraway · has seen all up to 2:07",
    ]);
  });
});

describe("[LINK] over the gap", () => {
  const drawStrip = (link: Parameters<typeof BeyondStrip>[0]["link"]) =>
    render(<BeyondStrip link={link} petZero={ZERO} now={NOW} />);

  it("says what the hub beyond can have seen, and how old that word is", () => {
    drawStrip({
      beyond: [farHubOf({ state: "linking", sentUpTo: second(7620), unsent: 2, heardAt: second(7500) })],
      followers: [],
    });
    expect(screen.getByRole("region", { name: "Over the gap" })).toHaveTextContent(
      "Ground hub has got all up to 2:07 · 2 waiting to be sent · heard 5 min ago",
    );
  });

  it("says the same of hubs that link with this one, and nothing of tablets", () => {
    drawStrip({
      beyond: [],
      followers: [
        followerOf({ name: "Backup", present: false }),
        followerOf({
          device: "/hubs/v",
          name: "Vehicle",
          role: "relay",
          present: false,
          seenUpTo: second(7620),
        }),
      ],
    });
    expect(screen.getByRole("region", { name: "Over the gap" })).toHaveTextContent(
      /^Vehicle away · has seen all up to 2:07$/,
    );
  });

  it("is not there without a gap", () => {
    drawStrip({ beyond: [], followers: [followerOf()] });
    expect(screen.queryByRole("region")).toBeNull();
  });
});

describe("[LINK] what the reader is told", () => {
  beforeEach(() => localStorage.clear());

  const file = fileWith([step("a", "ev1", 5), step("b", "ev1", 5)]);
  const elsewhere = { source: "/devices/ground", actor: "Ground" };
  const skip = { step: "a", reason: "no need" };

  it("that entries were stamped anew is told until it is put away at the link", async () => {
    const words = message("link/entered-anew", { count: 2 });
    const link = linkOf({ notices: [{ key: "restamped-1", at: NOW, words }] });
    const links = drawWithLinks(<Told folded={LogWriter.started(file).folded} link={link} />);
    expect(within(screen.getByRole("status")).getByText(inWords(words))).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Understood" }));
    expect(links.dismiss).toHaveBeenCalledExactlyOnceWith(walk, "restamped-1");
  });

  it("[LOG3] a mark that lost against a skip is told its author in words, once", async () => {
    const { folded } = LogWriter.started(file)
      .enter("step.skipped", skip, 1, elsewhere)
      .enter("step.done", { step: "a" }, 1);
    const links = drawWithLinks(<Told folded={folded} link={linkOf()} />);
    expect(screen.getByRole("status")).toHaveTextContent(
      "Your mark of step 1.1 “Do a” did not count: Ground had skipped it first. Open the step to change that.",
    );
    await userEvent.click(screen.getByRole("button", { name: "Understood" }));
    expect(screen.getByRole("status")).toBeEmptyDOMElement();
    expect(links.dismiss).not.toHaveBeenCalled();
    drawWithLinks(<Told folded={folded} link={linkOf()} />);
    for (const status of screen.getAllByRole("status")) expect(status).toBeEmptyDOMElement();
  });

  it("[LOG3] a skip that lost against a mark is told its author, by the call sign of who marked", () => {
    const { folded } = LogWriter.started(file)
      .enter("step.done", { step: "a" }, 1, { source: "/devices/ground", actor: "ev2" })
      .enter("step.skipped", skip, 1);
    drawWithLinks(<Told folded={folded} link={linkOf()} />);
    expect(screen.getByRole("status")).toHaveTextContent(
      "Your skip of step 1.1 “Do a” did not count: EV2 had marked it done first.",
    );
  });

  it.each([
    [
      "the winner",
      (log: LogWriter) => log.enter("step.done", { step: "a" }, 1).enter("step.skipped", skip, 1, elsewhere),
    ],
    [
      "two who agree",
      (log: LogWriter) =>
        log.enter("step.done", { step: "a" }, 1, elsewhere).enter("step.done", { step: "a" }, 1),
    ],
    [
      "who undid the own mark",
      (log: LogWriter) => log.enter("step.done", { step: "a" }, 1).enter("step.skipped", skip, 1),
    ],
  ])("%s is told nothing", (_, enter) => {
    drawWithLinks(<Told folded={enter(LogWriter.started(file)).folded} link={linkOf()} />);
    expect(screen.getByRole("status")).toBeEmptyDOMElement();
  });
});
