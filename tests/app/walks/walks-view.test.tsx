import { fireEvent, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { WalksView } from "../../../src/app/walks/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { flownIn, twoSteps, walkOf } from "../../core/learn/observed-walks.ts";
import { procedureOf } from "../../core/procedure-builder.ts";
import { toldBy } from "../learn/told-walks.ts";

function show(
  logs: readonly (readonly Entry[])[],
  { file = twoSteps() as ProcedureFile, isWorking = false } = {},
) {
  const onOpen = vi.fn();
  const told = toldBy(file, logs);
  render(
    <WalksView
      outline={outlineOf(procedureOf(file))}
      told={isWorking ? { ...told, scores: null } : told}
      onOpen={onOpen}
    />,
  );
  return { onOpen };
}

const several = (count: number, time: (at: number) => number, mode: "live" | "rehearsal" = "live") =>
  Array.from({ length: count }, (_, at) => flownIn(`${mode}${at}`, [time(at), 10], { mode }));

describe("walks compared", () => {
  it("[CMP1] every walk has its finish, how it kept the order, its deviations, and a strip", () => {
    const odd = walkOf("odd").enter("step.done", { step: "stow", outOfOrder: true }, 4).done(["turn", 6]);
    show([...several(2, () => 3), odd.entries]);
    const items = within(screen.getByRole("region", { name: "3 walks" })).getAllByRole("listitem");
    const heads = items.filter((item) => item.classList.contains("compared-walk"));
    expect(heads).toHaveLength(3);
    expect(heads[0]).toHaveTextContent("complete, last step 0:13, 0 s later than planned");
    expect(heads[0]).toHaveTextContent("order kept at the one place there is · no deviations");
    expect(heads[2]).toHaveTextContent("order broken at the one place there is");
    expect(heads[2]?.querySelectorAll(".walk-strip-deviation").length).toBeGreaterThan(0);
  });

  it("[CMP1] below five walks a step has the walks alone, from five on points and a spread", () => {
    show(several(4, (at) => 3 + at / 10));
    expect(screen.getAllByText("4 walks: below five there are only the walks themselves")).toHaveLength(2);
  });

  it("[CMP1] five walks have points", () => {
    show(several(5, (at) => 3 + at / 10));
    expect(screen.getAllByText(/^Half within .*usually off by a factor of/)).toHaveLength(2);
  });

  it("[CMP1] a walk's button opens its review, its strip the review at the step that was tapped", async () => {
    const { onOpen } = show(several(1, () => 3));
    await userEvent.click(screen.getByRole("button", { name: /^Review the walk of/ }));
    expect(onOpen).toHaveBeenLastCalledWith("live0", null);
    const strip = document.querySelector(".walk-strip") as SVGSVGElement;
    strip.getBoundingClientRect = () => ({ left: 0, top: 0, width: 150, height: 54 }) as DOMRect;
    // PET 1 min of 15, and PET 12 min, both on the line of EV1.
    fireEvent.click(strip, { clientX: 10, clientY: 5 });
    expect(onOpen).toHaveBeenLastCalledWith("live0", "turn");
    fireEvent.click(strip, { clientX: 120, clientY: 5 });
    expect(onOpen).toHaveBeenLastCalledWith("live0", "stow");
  });

  it("[CMP1] rehearsals are the second group until somebody says otherwise, and differences are shown or none is", async () => {
    const live = several(3, (at) => 6 + at / 50);
    show([...live, ...several(3, (at) => 3 + at / 50, "rehearsal")]);
    const groups = screen.getByRole("region", { name: "Two groups" });
    expect(groups).toHaveTextContent("3 walks in the first group, 3 in the second.");
    expect(groups).toHaveTextContent("A difference is shown in 1 of 1 steps that were tested.");
    expect(groups).toHaveTextContent("in the second group 0.5 times as long (3 and 3 walks)");
    const [first] = screen.getAllByRole("checkbox", { checked: false });
    if (first) await userEvent.click(first);
    expect(groups).toHaveTextContent("2 walks in the first group, 4 in the second.");
    expect(groups).toHaveTextContent("No difference is shown");
  });

  it("[CMP1] one group alone is not compared", () => {
    show(several(2, () => 3));
    expect(screen.getByRole("region", { name: "Two groups" })).toHaveTextContent(
      "Mark the walks of a second group",
    );
  });

  it("[CMP1] of many walks the first are drawn, and the rest when asked for", async () => {
    show(several(27, (at) => 3 + at / 100));
    expect(document.querySelectorAll(".walk-strip")).toHaveLength(25);
    await userEvent.click(screen.getByRole("button", { name: "Show 2 more walks" }));
    expect(document.querySelectorAll(".walk-strip")).toHaveLength(27);
  });

  it("[CMP2] forecasts are worked out after the rest, and are judged only where there are enough", () => {
    show(
      several(2, () => 3),
      { isWorking: true },
    );
    const part = screen.getByRole("region", { name: "Were the forecasts right?" });
    expect(part).toHaveTextContent("Working the forecasts out again");
  });

  it("[CMP2] without a forecast that can be judged it says what it takes", () => {
    show(several(2, () => 3));
    const part = screen.getByRole("region", { name: "Were the forecasts right?" });
    expect(part).toHaveTextContent("No forecast can be judged yet");
  });

  it("[CMP1] without a walk it says so, and what to do", () => {
    show([]);
    expect(screen.getByRole("status")).toHaveTextContent(/no walk of this procedure on this device yet/);
  });
});
