import { render, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import type { LastTap } from "../../../src/app/follow/follow-tools.tsx";
import { FollowTools } from "../../../src/app/follow/follow-tools.tsx";

const ENTERING = {
  actions: {} as never,
  actor: "iv",
  setActor: () => {},
  undo: () => {},
  refused: () => {},
  remark: null,
  failure: null,
  hideFailure: () => {},
};
const LAST: LastTap = { entries: [], words: "Step 1.1 done" };
const HINT = "What you enter stands here, with its undo.";

const show = ({ last = null as LastTap | null, remark = null as string | null, mark = true } = {}) =>
  render(
    <FollowTools
      phase="running"
      entering={{ ...ENTERING, remark }}
      last={last}
      may={{ mark }}
      onPanel={() => {}}
      onMap={() => {}}
      toNow={null}
    />,
  );

describe("the foot of the follow screen", () => {
  it("says what its row is for as long as nothing was entered, and not as something that happened", () => {
    show();
    expect(screen.getByText(HINT)).toBeInTheDocument();
    expect(screen.getByRole("status")).toBeEmptyDOMElement();
  });

  it("has the last entry there, or what is said of a tap, and nothing else", () => {
    show({ last: LAST });
    expect(screen.getByRole("status")).toHaveTextContent("Step 1.1 done");
    expect(screen.queryByText(HINT)).toBeNull();
    show({ remark: "Nothing was marked" });
    expect(screen.queryByText(HINT)).toBeNull();
  });

  it("promises nothing to who may enter nothing", () => {
    show({ mark: false });
    expect(screen.queryByText(HINT)).toBeNull();
  });
});
