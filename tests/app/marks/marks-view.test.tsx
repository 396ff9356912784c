import { readdirSync, readFileSync } from "node:fs";
import { render, screen, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { MarksView } from "../../../src/app/marks/index.ts";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import { words } from "../../../src/words/index.ts";

/** Marks by another name there, or no marks of what is shown: each with why. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  "drag-mark.tsx": "where a dragged row would go, for as long as it is dragged",
  "wait-mark.tsx": "drawn as the hatch of the timeline's legend",
};

/** The files of the screens that draw a mark, by how such files are named. */
const drawing = readdirSync("src/app", { recursive: true, encoding: "utf8" }).filter((path) =>
  /-(mark|tag|legend)\.tsx$/.test(path),
);

const course = () => {
  const { outline } = checkProcedureText(readFileSync("procedures/practice.procedure.json", "utf8"));
  return (outline && planOf(outline, { start: null, light: null }).timeline?.course) ?? null;
};

describe("the page of all marks", () => {
  it("[HLP2] has every mark that a screen draws", () => {
    const page = readFileSync("src/app/marks/marks-view.tsx", "utf8");
    expect(drawing.length).toBeGreaterThan(6);
    const component = (path: string) =>
      (path.split("/").at(-1) ?? "")
        .replace(/\.tsx$/, "")
        .replace(/(^|-)([a-z])/g, (_, __, letter: string) => letter.toUpperCase());
    const lacking = drawing.filter(
      (path) => !page.includes(`<${component(path)}`) && !ELSEWHERE[path.split("/").at(-1) ?? ""],
    );
    expect(lacking).toEqual([]);
  });

  it("[HLP2] has a meaning beside each, said once, under headings, with a worksite as a sample", () => {
    const { container } = render(<MarksView sample={course()} />);
    const said = screen.getAllByRole("listitem").map((item) => item.textContent);
    expect(new Set(said).size).toBe(said.length);
    for (const text of said) expect(text).not.toBe("");
    expect(screen.getAllByRole("heading", { level: 2 }).length).toBeGreaterThan(5);
    for (const shape of ["▲", "◆", "●"]) expect(container).toHaveTextContent(shape);
    for (const level of ["warning", "caution", "note"] as const)
      expect(screen.getByText(words(`parts/alert-${level}`))).toBeVisible();
    expect(
      within(container).getByRole("img", { name: words("map/figure-says", { count: 3 }) }),
    ).toBeVisible();
  });

  it("[HLP2] stands without a picture where the sample cannot be read", () => {
    render(<MarksView sample={null} />);
    expect(screen.queryByRole("img")).toBeNull();
    expect(screen.getByText(words("guide/map-places"))).toBeVisible();
  });
});
