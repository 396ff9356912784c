import { fireEvent, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { lastHub, readHubAddress } from "../../../src/app/link/hub-address.ts";
import { JoinForm } from "../../../src/app/link/index.ts";
import { InviteForm } from "../../../src/app/link/invite-form.tsx";
import { ShareForm } from "../../../src/app/link/share-form.tsx";
import type { JoinOutcome } from "../../../src/io/link/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { drawWithLinks, NOW, second, walk } from "./stand-in-link.tsx";

const button = (name: string) => screen.getByRole("button", { name });
const code = () => screen.getByLabelText(/code/i);
const who = () => screen.getByLabelText("Who uses this tablet");

beforeEach(() => {
  localStorage.clear();
  lastHub.choose("");
});

describe("[LINK] a native shell, which no hub serves", () => {
  const hub = () => screen.getByLabelText(/^Address of the hub/);

  it("asks which hub, takes the whole link of an invitation, and keeps the address once it was let in", async () => {
    const links = drawWithLinks(<JoinForm code="" onJoined={vi.fn()} />, NOW, null);
    await userEvent.type(hub(), "https://vehicle.local:4173/join/ABCDEFGHJ");
    await userEvent.tab();
    expect(hub()).toHaveValue("https://vehicle.local:4173");
    expect(code()).toHaveValue("ABC-DEF-GHJ");
    links.join.mockResolvedValueOnce({ kind: "refused", words: "This code is wrong or has expired." });
    await userEvent.type(who(), "Ground{Enter}");
    expect(await screen.findByRole("alert")).toBeVisible();
    expect(lastHub.current()).toBe("");
    await userEvent.click(button("Join the walk"));
    expect(links.join).toHaveBeenLastCalledWith({
      hub: "https://vehicle.local:4173",
      code: "ABC-DEF-GHJ",
      name: "Ground",
    });
    expect(lastHub.current()).toBe("https://vehicle.local:4173");
  });

  it("refuses what is no address in words, without asking anybody", async () => {
    const links = drawWithLinks(<JoinForm code="abcdefghj" onJoined={vi.fn()} />, NOW, null);
    await userEvent.type(hub(), "http://vehicle.local:4173");
    await userEvent.type(who(), "Ground{Enter}");
    expect(await screen.findByRole("alert")).toHaveTextContent(/no address of a hub/);
    expect(links.join).not.toHaveBeenCalled();
  });

  it("brings a walk to the hub that it names", async () => {
    lastHub.choose("https://10.0.0.7:4173");
    const links = drawWithLinks(<ShareForm walk={walk} />, NOW, null);
    expect(hub()).toHaveValue("https://10.0.0.7:4173");
    await userEvent.type(who(), "Inside");
    await userEvent.type(screen.getByLabelText(/Owner’s code/), "abcdefghj{Enter}");
    expect(links.share).toHaveBeenCalledExactlyOnceWith({
      hub: "https://10.0.0.7:4173",
      walk,
      ownerCode: "abcdefghj",
      name: "Inside",
    });
  });

  it.each([
    ["hub.example", "https://hub.example"],
    [" https://Hub.example:4173/ ", "https://hub.example:4173"],
    ["[fd00::7]:4173", "https://[fd00::7]:4173"],
    ["http://localhost:4173", "http://localhost:4173"],
    ["http://127.0.0.1:4173/join/abc", "http://127.0.0.1:4173"],
  ])("reads %s as an address", (typed, origin) => {
    expect(readHubAddress(typed)?.origin).toBe(origin);
  });

  it.each([
    "",
    "https://",
    "http://hub.example",
    "ftp://hub.example",
    "https://a:b@hub.example",
    "https://hub.example/elsewhere",
    "two words",
    "javascript:alert(1)",
  ])("reads %j as none", (typed) => {
    expect(readHubAddress(typed)).toBeNull();
  });
});

describe("[LINK] joining a walk", () => {
  it.each(["abcdefghj", "ABC-DEF-GHJ", "abc def ghj", " abc–def—ghj"])(
    "with a code entered as %j",
    async (entered) => {
      const onJoined = vi.fn();
      const links = drawWithLinks(<JoinForm code="" onJoined={onJoined} />);
      expect(button("Join the walk")).toBeDisabled();
      await userEvent.type(code(), entered);
      await userEvent.type(who(), " Ground ");
      expect(code()).toHaveValue("ABC-DEF-GHJ");
      await userEvent.click(button("Join the walk"));
      expect(links.join).toHaveBeenCalledExactlyOnceWith({ code: "ABC-DEF-GHJ", name: "Ground" });
      expect(onJoined).toHaveBeenCalledExactlyOnceWith(walk);
    },
  );

  it("with a code that came along, once the reader says who they are; that is kept for the next time", async () => {
    drawWithLinks(<JoinForm code="abcdefghj" onJoined={vi.fn()} />);
    expect(code()).toHaveValue("ABC-DEF-GHJ");
    expect(button("Join the walk")).toBeDisabled();
    await userEvent.type(who(), "Ground{Enter}");
    expect(localStorage.getItem("tetherline.follower")).toBe("Ground");
  });

  it.each<JoinOutcome>([
    { kind: "refused", words: "This code is wrong or has expired." },
    { kind: "unreachable", words: "The hub cannot be reached." },
  ])("says why it did not work and lets it be tried again (%j)", async (outcome) => {
    const onJoined = vi.fn();
    const links = drawWithLinks(<JoinForm code="abcdefghj" onJoined={onJoined} />);
    links.join.mockResolvedValueOnce(outcome);
    await userEvent.type(who(), "Ground{Enter}");
    expect(await screen.findByRole("alert")).toHaveTextContent(
      "words" in outcome ? inWords(outcome.words) : "",
    );
    expect(onJoined).not.toHaveBeenCalled();
    expect(localStorage.getItem("tetherline.follower")).toBeNull();
    await userEvent.click(button("Join the walk"));
    expect(onJoined).toHaveBeenCalledOnce();
    expect(screen.queryByRole("alert")).toBeNull();
  });

  it("asks the hub once at a time", async () => {
    const links = drawWithLinks(<JoinForm code="abcdefghj" onJoined={vi.fn()} />);
    links.join.mockReturnValueOnce(new Promise(() => {}));
    await userEvent.type(who(), "Ground{Enter}");
    expect(button("Asking the hub…")).toBeDisabled();
    await userEvent.type(who(), "{Enter}");
    expect(links.join).toHaveBeenCalledOnce();
  });

  it("with the hub's own code lets the reader choose among its walks", async () => {
    const onJoined = vi.fn();
    const links = drawWithLinks(<JoinForm code="abcdefghj" onJoined={onJoined} />);
    const walkOf = (id: string, title: string) => ({
      walk: id,
      entries: 7,
      cursor: null,
      title,
      openedAt: NOW,
    });
    links.join.mockResolvedValueOnce({
      kind: "which",
      walks: [walkOf("walk-1", "Ring exchange"), walkOf("walk-2", "Pump")],
    } as unknown as JoinOutcome);
    await userEvent.type(who(), "Ground{Enter}");
    expect(onJoined).not.toHaveBeenCalled();
    await userEvent.click(await screen.findByRole("radio", { name: /Pump/ }));
    await userEvent.click(button("Join the walk"));
    expect(links.join).toHaveBeenLastCalledWith({ code: "ABC-DEF-GHJ", name: "Ground", walk: "walk-2" });
    expect(onJoined).toHaveBeenCalledOnce();
  });
});

describe("[LINK] sharing a walk", () => {
  it("takes the owner's code and says when it was wrong", async () => {
    const links = drawWithLinks(<ShareForm walk={walk} />);
    links.share.mockResolvedValueOnce({ kind: "refused", words: "This is not the owner’s code." });
    await userEvent.type(who(), "Inside");
    await userEvent.type(code(), "abcdefghj");
    await userEvent.click(button("Share this walk"));
    expect(links.share).toHaveBeenCalledExactlyOnceWith({ walk, ownerCode: "abcdefghj", name: "Inside" });
    expect(await screen.findByRole("alert")).toHaveTextContent("This is not the owner’s code.");
    links.share.mockResolvedValueOnce({ kind: "unreachable", words: "There is no hub here." });
    await userEvent.click(button("Share this walk"));
    expect(await screen.findByRole("alert")).toHaveTextContent("There is no hub here.");
  });
});

describe("[LINK] letting another tablet in", () => {
  const invitation = {
    code: "abcdefghj",
    role: "watcher",
    devices: 3,
    expires: second(7800 + 840),
    url: "https://192.0.2.7:8080/join/abcdefghj",
  } as const;

  it("makes a code for the role that was chosen, shows it, how to use it and for how long", async () => {
    const links = drawWithLinks(<InviteForm walk={walk} now={NOW} />);
    links.invite.mockResolvedValue(invitation);
    await userEvent.click(screen.getByRole("radio", { name: /Watcher/ }));
    fireEvent.change(screen.getByLabelText("How many tablets it lets in"), { target: { value: "3" } });
    await userEvent.click(button("Make a code"));
    expect(links.invite).toHaveBeenCalledExactlyOnceWith(walk, "watcher", 15, 3);
    const made = within(await screen.findByRole("status"));
    expect(made.getByText("ABC-DEF-GHJ")).toBeVisible();
    expect(made.getByText("Good for 3 tablets, each once.")).toBeVisible();
    expect(made.getByText(/Lets in as watcher for another 14 min/)).toBeVisible();
    // This page was reached at an address that nobody else can reach.
    expect(made.getByText(/192\.0\.2\.7:8080/)).toBeVisible();
    expect(made.getByRole("img", { name: /QR code/ })).toBeVisible();
  });

  it("[HUB] a code lets in one tablet unless more are said, and at most fifty", async () => {
    const links = drawWithLinks(<InviteForm walk={walk} now={NOW} />);
    links.invite.mockResolvedValue({ ...invitation, devices: 1 });
    const field = screen.getByLabelText("How many tablets it lets in");
    for (const [entered, devices] of [
      ["1", 1],
      ["", 1],
      ["0", 1],
      ["2.9", 2],
      ["51", 50],
    ] as const) {
      fireEvent.change(field, { target: { value: entered } });
      await userEvent.click(button("Make a code"));
      expect(links.invite).toHaveBeenLastCalledWith(walk, "marker", 15, devices);
    }
    expect(await screen.findByText("Good for 1 tablet.")).toBeVisible();
  });

  it("offers another code once the one there is has expired, and forgets one for another role", async () => {
    const links = drawWithLinks(<InviteForm walk={walk} now={second(7800 + 841)} />);
    links.invite.mockResolvedValue(invitation);
    await userEvent.click(button("Make a code"));
    expect(await screen.findByText("This code has expired: make another.")).toBeVisible();
    await userEvent.click(screen.getByRole("radio", { name: /Lead/ }));
    expect(screen.queryByText("ABC-DEF-GHJ")).toBeNull();
  });

  it("says why the hub gave none", async () => {
    const links = drawWithLinks(<InviteForm walk={walk} now={NOW} />);
    links.invite.mockRejectedValue(new Error("The hub cannot be reached."));
    await userEvent.click(button("Make a code"));
    expect(await screen.findByRole("alert")).toHaveTextContent(
      /^The hub gave no code: The hub cannot be reached\.$/,
    );
  });
});
