import { render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { LibraryView } from "../../../src/app/library/index.ts";
import type { Services } from "../../../src/app/session/index.ts";
import { ServicesContext } from "../../../src/app/session/index.ts";
import { LIBRARY, libraryOf, revisionHash } from "../../../src/core/library/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import type { LinkStatus } from "../../../src/io/link/index.ts";
import { MemoryEntryStore, MemoryProcedureShelf } from "../../../src/io/store/index.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";
import { followerOf, linkOf } from "../link/stand-in-link.tsx";

const NOW = Date.UTC(2031, 3, 2, 9) as Instant;

const textOf = (revision: string, title = "Ring exchange") =>
  JSON.stringify({ ...fileWith([step("a", "ev1", 5)]), id: "ring", title, revision });
const A = textOf("A");

/** A device with a library, a shelf and a link that a test chooses. */
class Device {
  readonly log = new MemoryEntryStore("/devices/here", () => NOW);
  readonly shelf = new MemoryProcedureShelf(() => NOW);
  readonly onCompare = vi.fn<Parameters<typeof LibraryView>[0]["onCompare"]>();

  async keep(by: string, text: string, bases: readonly string[] = []): Promise<this> {
    const data = { text, bases: bases.map(revisionHash), why: `Because of ${by}.` };
    await this.log.append(LIBRARY, [{ name: "revision.kept", data, at: NOW, actor: by }]);
    return this;
  }

  show(link: LinkStatus = linkOf({ kind: "alone", role: null, hubName: null })): void {
    const links = { home: null, status: () => link, watch: () => () => {}, invitations: async () => [] };
    const services = {
      store: { log: this.log, shelf: this.shelf },
      links,
      now: () => NOW,
    } as unknown as Services;
    render(
      <ServicesContext value={services}>
        <LibraryView onCompare={this.onCompare} />
      </ServicesContext>,
    );
  }

  async kept() {
    const { entries } = await this.log.read(LIBRARY, 0);
    return libraryOf(entries).procedures;
  }
}

// Who kept something last is offered the next time.
beforeEach(() => localStorage.clear());

const button = (name: string | RegExp) => screen.queryByRole("button", { name });

describe("[WRT7] the hub’s library on a device", () => {
  it("that is alone and has nothing says so, and how it is linked and filled", async () => {
    new Device().show();
    expect(await screen.findByText("No procedure is in this library yet.")).toBeVisible();
    expect(screen.getByText(/This library is on this device alone/)).toBeVisible();
    expect(button("Link the library")).toBeVisible();
    expect(screen.getByText(/There is no procedure of your own on this device’s shelf/)).toBeVisible();
  });

  it("takes a revision to the shelf with who kept it and why, once", async () => {
    const device = await new Device().keep("Ada", A);
    device.show();
    expect(await screen.findByText("Because of Ada.")).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Take revision A by Ada to this device" }));
    expect(await screen.findByText(/On this device’s shelf/)).toBeVisible();
    expect(button(/^Take revision A/)).toBeNull();
    expect(await device.shelf.procedures()).toMatchObject([
      { text: A, saved: { by: "Ada", why: "Because of Ada." } },
    ]);
  });

  it("keeps a revision that is said to be made from the one before, by whom and why", async () => {
    const device = await new Device().keep("Ada", A);
    await device.shelf.addProcedure(textOf("B"), NOW);
    device.show();
    const keep = await screen.findByRole("button", { name: "Keep it in the library" });
    expect(keep).toBeDisabled();
    expect(screen.getByText("Say what it was made from.")).toBeVisible();
    await userEvent.click(screen.getByRole("checkbox", { name: /^revision A by Ada/ }));
    await userEvent.type(screen.getByLabelText("Who keeps it"), "Ben");
    await userEvent.type(screen.getByLabelText("Why"), "Shorter.");
    await userEvent.click(keep);
    expect(await screen.findByText("revision B by Ben is in the library.")).toBeVisible();
    const [ring] = await device.kept();
    expect(ring?.heads).toMatchObject([{ by: "Ben", why: "Shorter.", bases: [revisionHash(A)] }]);
  });

  it("tells two that went on from one revision, and lays both beside it when asked", async () => {
    const device = await new Device().keep("Ada", A);
    await device.keep("Ada", textOf("B"), [A]);
    await device.keep("Ben", textOf("C"), [A]);
    device.show();
    const both = /revision \w by \w+ and revision \w by \w+ both went on from revision A by Ada/;
    expect(await screen.findByText(both)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Bring them together" }));
    await waitFor(() => expect(device.onCompare).toHaveBeenCalledOnce());
    const [keys] = device.onCompare.mock.calls[0] ?? [];
    const revisionOf = async (key: string | null | undefined) =>
      (await device.shelf.procedure(key ?? ""))?.revision;
    expect([await revisionOf(keys?.before), await revisionOf(keys?.after)].sort()).toEqual(["B", "C"]);
    expect(await revisionOf(keys?.base)).toBe("A");
  });

  it("[LINK] lets whoever does not lead take what is there and keep nothing", async () => {
    const device = await new Device().keep("Ada", A);
    device.show(linkOf({ role: "watcher" }));
    expect(await screen.findByText("Vehicle hub: linked, watcher")).toBeVisible();
    expect(screen.getByText(/Only those who lead in this library keep revisions/)).toBeVisible();
    expect(button("Keep it in the library")).toBeNull();
    expect(await screen.findByRole("button", { name: /^Take revision A/ })).toBeVisible();
  });

  it("[LINK] goes on while the hub is away, and says what has not been sent", async () => {
    const device = new Device();
    await device.shelf.addProcedure(A, NOW);
    device.show(linkOf({ kind: "linking", unsent: 2 }));
    expect(await screen.findByText("Vehicle hub: linking: trying to reach the hub, lead")).toBeVisible();
    expect(screen.getByText("2 revisions kept here have not been sent yet.")).toBeVisible();
    await userEvent.type(await screen.findByLabelText("Who keeps it"), "Ada");
    await userEvent.click(screen.getByRole("button", { name: "Keep it in the library" }));
    expect(await screen.findByText("revision A by Ada is in the library.")).toBeVisible();
  });

  it("says why it cannot be read, and what could not be kept, when the store is lost", async () => {
    const device = new Device();
    await device.shelf.addProcedure(A, NOW);
    vi.spyOn(device.log, "read").mockRejectedValue(new Error("The store is gone."));
    vi.spyOn(device.log, "append").mockRejectedValue(new Error("The store is gone."));
    device.show();
    expect(await screen.findByRole("alert")).toHaveTextContent(
      "The library could not be read: The store is gone.",
    );
    await userEvent.type(screen.getByLabelText("Who keeps it"), "Ada");
    await userEvent.click(screen.getByRole("button", { name: "Keep it in the library" }));
    expect(await screen.findByText(/The store is gone\.$/, { selector: ".library-told" })).toBeVisible();
  });

  it("shows a thousand revisions, the latest first", async () => {
    const device = new Device();
    const drafts = Array.from({ length: 1000 }, (_, at) => ({
      name: "revision.kept" as const,
      data: {
        text: textOf(`${at}`),
        bases: at === 0 ? [] : [revisionHash(textOf(`${at - 1}`))],
        why: "",
      },
      at: NOW,
      actor: "Ada",
    }));
    await device.log.append(LIBRARY, drafts);
    device.show();
    const ring = await screen.findByRole("region", { name: "Ring exchange" });
    const rows = within(ring).getAllByRole("listitem");
    expect(rows).toHaveLength(1000);
    expect(rows[0]).toHaveTextContent(/^revision 999 by Ada/);
    expect(rows[999]).toHaveTextContent(/^revision 0 by Ada/);
  }, 120_000);

  it("[LINK] speaks of the library in its link panel, and of no walk", async () => {
    const device = await new Device().keep("Ada", A);
    device.show(linkOf({ followers: [followerOf({ name: "Ben" })], onlyHere: 1, key: "tied" }));
    await userEvent.click(await screen.findByRole("button", { name: "Link and others" }));
    expect(button("Take Ben off the library")).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: /^Take everybody off/ }));
    expect(screen.getByText("Take everybody else off this library?")).toBeVisible();
    expect(screen.getByText(/1 revision of another device is only on this one/)).toBeVisible();
    const roles = screen.getAllByRole("radio").map(({ parentElement }) => parentElement?.textContent);
    expect(roles).toEqual([
      "Watcher takes revisions to its device, and keeps none",
      "Lead keeps revisions in the library, and lets others in",
    ]);
    expect(document.body.textContent).not.toMatch(/\bthe walk\b|this walk/);
  });
});
