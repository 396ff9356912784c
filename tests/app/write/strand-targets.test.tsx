import { fireEvent, render, screen, within } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { strandsOf } from "../../../src/app/braid/index.ts";
import { JointForm } from "../../../src/app/write/joint-form.tsx";
import { StrandTargets } from "../../../src/app/write/strand-targets.tsx";
import { fileWith, step } from "../../core/procedure-builder.ts";

const JOINT = step("open", ["ev1", "iv"], 2);
const FILE = fileWith([JOINT, step("rest", "ev2", 1)]);
const CREW = FILE.crew.map(({ id }) => id);

function shown(gap: number, at = JOINT) {
  const [onTurn, onRow] = [vi.fn<(crew: string) => void>(), vi.fn<(row: string) => void>()];
  const row = (key: string, y: number) => ({ key, lanes: [], stage: "later" as const, y });
  const braid = {
    rows: [row("task:all", 20), row("open", 80), row("rest", 140)],
    width: 150,
    gap,
    strandX: (lane: number) => 26 + lane * gap,
  };
  const { container } = render(
    <StrandTargets
      braid={braid}
      strands={strandsOf(FILE.crew)}
      crew={CREW}
      step={at}
      number="1.1"
      onTurn={onTurn}
      onRow={onRow}
    />,
  );
  return { onTurn, onRow, container };
}

const targets = () => within(screen.getByRole("group", { name: "Who does step 1.1" })).getAllByRole("button");

describe("strands that are tapped", () => {
  it("[WRT3] say beforehand what a tap does, and turn who is tapped", () => {
    const { onTurn } = shown(48);
    expect(targets().map((one) => one.getAttribute("aria-label"))).toEqual([
      "Take EV1 out of step 1.1",
      "Let EV2 take part in step 1.1",
      "Take IV out of step 1.1",
    ]);
    expect(targets().map((one) => one.getAttribute("aria-pressed"))).toEqual(["true", "false", "true"]);
    for (const target of targets()) fireEvent.click(target);
    expect(onTurn.mock.calls).toEqual([["ev1"], ["ev2"], ["iv"]]);
  });

  it.each([48, 32, 24])(
    "[WRT3] are as wide as the strands are apart, up to 48 px, and none overlaps another: %d px",
    (gap) => {
      shown(gap);
      const boxes = targets().map(({ style }) => ({
        left: Number.parseFloat(style.left),
        width: Number.parseFloat(style.width),
        height: Number.parseFloat(style.height),
      }));
      for (const [index, { left, width, height }] of boxes.entries()) {
        expect(width).toBe(gap);
        expect(height).toBe(48);
        expect(left).toBe(26 + index * gap - width / 2);
      }
    },
  );

  it("[WRT3] a tap beside another row only goes there", () => {
    const { onTurn, onRow, container } = shown(48);
    const ground = container.querySelector(".write-strands-ground");
    if (!ground) throw new Error("there is nothing to tap");
    fireEvent.click(ground, { clientX: 30, clientY: 135 });
    expect(onRow.mock.calls).toEqual([["rest"]]);
    expect(onTurn).not.toHaveBeenCalled();
  });

  it("[WRT3] are not there for a step that is not in the table", () => {
    shown(48, step("gone", "ev1", 1));
    expect(screen.queryByRole("button")).toBeNull();
  });

  it("[WRT3] can be pressed by their call signs instead", () => {
    const onTurn = vi.fn<(crew: string) => void>();
    render(<JointForm file={FILE} step={JOINT} onTurn={onTurn} onEnd={() => {}} />);
    expect(screen.getByRole("button", { name: "EV1" })).toHaveAttribute("aria-pressed", "true");
    fireEvent.click(screen.getByRole("button", { name: "EV2" }));
    expect(onTurn).toHaveBeenCalledWith("ev2");
  });
});
