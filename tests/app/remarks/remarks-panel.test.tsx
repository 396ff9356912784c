import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { RemarksPanel, useRemarks } from "../../../src/app/remarks/index.ts";
import { ServicesContext } from "../../../src/app/session/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { Remark } from "../../../src/core/remarks/index.ts";
import { REMARK_FORMAT } from "../../../src/core/remarks/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { MemoryRemarkStore } from "../../../src/io/store/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

const FILE = fileWith([task("one", [step("a", "ev1", 10), step("b", "ev2", 4)])], { revision: "C" });
const TEXT = JSON.stringify(FILE);
const outline = outlineOf(procedureOf(FILE));

beforeEach(() => localStorage.clear());

function Hosted({ text }: { readonly text: string }) {
  const here = useRemarks("trial", text);
  return here ? <RemarksPanel outline={outline} here={here} onClose={() => {}} /> : null;
}

async function show(remarks: readonly Remark[] = [], text = TEXT) {
  const store = new MemoryRemarkStore();
  await store.addRemarks(remarks);
  const services = { store: { remarks: store }, now: () => Date.UTC(2031, 3, 2, 9) as Instant };
  const drawn = (shown: string) => (
    <ServicesContext value={services as never}>
      <Hosted text={shown} />
    </ServicesContext>
  );
  const { rerender } = render(drawn(text));
  await screen.findByRole("dialog", { name: "Remarks" });
  return { store, again: (other: string) => rerender(drawn(other)) };
}

async function speak(name: string, role: string) {
  await userEvent.clear(screen.getByLabelText("Your name"));
  await userEvent.type(screen.getByLabelText("Your name"), name);
  await userEvent.clear(screen.getByLabelText("The role in which you speak"));
  await userEvent.type(screen.getByLabelText("The role in which you speak"), role);
}

const remark = (id: string, kind: Remark["kind"], more: Partial<Remark> = {}): Remark => ({
  format: REMARK_FORMAT,
  id,
  procedure: "trial",
  revision: "B",
  text: null,
  step: null,
  by: { name: "M. Roy", role: "IV" },
  at: "2031-04-02T08:00:00Z",
  kind,
  says: kind === "comment" ? "Too short" : "",
  to: null,
  ...more,
});

describe("the panel of remarks", () => {
  it("[WRT10] says that a remark approves nothing, and takes none from nobody", async () => {
    await show();
    expect(screen.getByText(/^A remark approves nothing\./)).toBeVisible();
    await userEvent.type(screen.getByRole("textbox", { name: "Comment" }), "Too short");
    expect(screen.getByRole("button", { name: "Add the comment" })).toBeDisabled();
    expect(screen.getByRole("button", { name: "Agree to this text" })).toBeDisabled();
  });

  it("[WRT10] keeps a comment on a step, which is open until it is resolved and can be opened again", async () => {
    const { store } = await show();
    await speak("K. Lind", "Flight lead");
    await userEvent.selectOptions(screen.getByLabelText("About"), "b");
    await userEvent.type(screen.getByRole("textbox", { name: "Comment" }), "Too short");
    await userEvent.click(screen.getByRole("button", { name: "Add the comment" }));
    expect(await screen.findByText("K. Lind (Flight lead): Too short")).toBeVisible();
    expect(screen.getByRole("textbox", { name: "Comment" })).toHaveValue("");
    expect(await store.remarks("trial")).toMatchObject([
      { kind: "comment", step: "b", revision: "C", by: { name: "K. Lind", role: "Flight lead" } },
    ]);
    await userEvent.click(screen.getByRole("button", { name: "Resolve: Too short" }));
    expect(await screen.findByText("No comment is open.")).toBeVisible();
    await userEvent.click(screen.getByText("Resolved comments"));
    await userEvent.click(screen.getByRole("button", { name: "Open again: Too short" }));
    expect(await screen.findByRole("button", { name: "Resolve: Too short" })).toBeVisible();
    expect(await store.remarks("trial")).toHaveLength(3);
  });

  it("[WRT10] shows an agreement as holding for this text alone", async () => {
    const { again } = await show();
    await speak("K. Lind", "Flight lead");
    await userEvent.click(screen.getByRole("button", { name: "Agree to this text" }));
    expect(await screen.findByText("holds for this text")).toBeVisible();
    again(`${TEXT} `);
    expect(await screen.findByText(/was given to another text \(revision C\)/)).toBeVisible();
    expect(screen.getByText("Nobody agreed to this text.")).toBeVisible();
  });

  it("[WRT10] lets nobody take back what another agreed to", async () => {
    await show([remark("a", "agreed")]);
    await speak("K. Lind", "IV");
    expect(screen.queryByRole("button", { name: /^Take back/ })).toBeNull();
    await speak("M. Roy", "IV");
    await userEvent.click(screen.getByRole("button", { name: /^Take back/ }));
    expect(await screen.findByText("Nobody agreed to this text.")).toBeVisible();
    expect(screen.queryByText(/M\. Roy \(IV\) agreed/)).toBeNull();
  });

  it("[WRT10] shows a comment on a step that is no more, and tells remarks without effect", async () => {
    await show([remark("c", "comment", { step: "gone" }), remark("r", "resolved", { to: "nowhere" })]);
    const list = within(screen.getByRole("dialog"));
    expect(list.getByText('step "gone", which is no more')).toBeVisible();
    expect(list.getByText(/^One remark is without effect/)).toBeVisible();
  });
});
