import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it } from "vitest";
import { StepPictures } from "../../../src/app/pictures/index.ts";
import { fileWith, procedureOf, step } from "../../core/procedure-builder.ts";

const SVG = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>').toString(
  "base64",
);
const procedure = procedureOf({
  ...fileWith([step("look", "iv", 5, { pictures: ["latch"] }), step("rest", "iv", 5)], {
    pictures: [{ id: "latch", label: "The latch, open", type: "image/svg+xml", data: SVG }],
  }),
  format: "tetherline.procedure/2",
});
const [look, rest] = procedure.tasks[0]?.steps ?? [];

describe("the pictures of a step", () => {
  it("[MAP3] are images alone, and each is enlarged by a tap and made small by another", async () => {
    const user = userEvent.setup();
    if (!look) throw new Error("no step");
    const { container } = render(<StepPictures procedure={procedure} step={look} />);
    const image = screen.getByRole("img", { name: "The latch, open" });
    expect(image).toHaveAttribute("src", `data:image/svg+xml;base64,${SVG}`);
    expect(container.querySelector("svg, object, iframe, embed, script")).toBeNull();
    const button = screen.getByRole("button", { name: "Enlarge The latch, open" });
    await user.click(button);
    expect(button).toHaveAttribute("aria-pressed", "true");
    await user.click(button);
    expect(button).toHaveAttribute("aria-pressed", "false");
  });

  it("[MAP3] take no room where a step has none", () => {
    if (!rest) throw new Error("no step");
    expect(render(<StepPictures procedure={procedure} step={rest} />).container).toBeEmptyDOMElement();
  });
});
