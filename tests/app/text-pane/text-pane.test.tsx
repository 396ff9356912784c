import { forEachDiagnostic } from "@codemirror/lint";
import { EditorView } from "@codemirror/view";
import { render, screen } from "@testing-library/react";
import { Suspense } from "react";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { LazyTextPane } from "../../../src/app/text-pane/index.ts";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

beforeAll(() => {
  // What the editor measures lines by, which jsdom lacks.
  Range.prototype.getClientRects ??= () => [] as unknown as DOMRectList;
  // What it asks about the selection within a shadow root, where it takes jsdom for Safari.
  document.execCommand ??= () => false;
});

const textOf = (title: string) =>
  JSON.stringify(fileWith([task("one", [step("a", "ev1", 10, { after: ["nobody"] })])], { title }), null, 2);

type Props = React.ComponentProps<typeof LazyTextPane>;

async function show(given: Partial<Props> = {}) {
  const onTyped = vi.fn<(text: string) => void>();
  const draw = (props: Partial<Props>) => (
    <Suspense fallback={null}>
      <LazyTextPane
        text={textOf("First")}
        unread={null}
        findings={[]}
        goTo={null}
        onTyped={onTyped}
        {...props}
      />
    </Suspense>
  );
  const { rerender, container } = render(draw(given));
  await screen.findByRole("region", { name: "The file as text" });
  // The editor stands in a shadow root, into which roles are not looked for.
  const host = container.querySelector(".text-pane-editor > div")?.shadowRoot;
  const content = host?.querySelector<HTMLElement>('[role="textbox"][aria-label="The procedure as JSON"]');
  if (!content) throw new Error("there is no text");
  const view = EditorView.findFromDOM(content);
  if (!view) throw new Error("there is no editor");
  return { onTyped, view, again: (props: Partial<Props>) => rerender(draw(props)) };
}

describe("the text pane", () => {
  it("[WRT6] tells what is typed at once, whole, and keeps it however wrong it is", async () => {
    const { onTyped, view, again } = await show();
    view.dispatch({ changes: { from: 0, insert: "{{ not JSON " } });
    const typed = view.state.doc.toString();
    expect(onTyped).toHaveBeenLastCalledWith(typed);
    expect(typed.startsWith("{{ not JSON ")).toBe(true);
    again({ unread: typed });
    expect(view.state.doc.toString()).toBe(typed);
    expect(screen.getByText(/cannot be read yet/)).toBeVisible();
  });

  it("[WRD3] [WRT6] runs from left to right, whichever way the page runs", async () => {
    document.documentElement.dir = "rtl";
    try {
      const { view } = await show();
      const { host } = view.dom.getRootNode() as ShadowRoot;
      expect(host).toHaveAttribute("dir", "ltr");
    } finally {
      document.documentElement.removeAttribute("dir");
    }
  });

  it("[WRT6] puts in what differs of a text from outside, without telling it as typed, and keeps the cursor", async () => {
    const { onTyped, view, again } = await show();
    const place = view.state.doc.toString().indexOf('"tasks"');
    view.dispatch({ selection: { anchor: place } });
    again({ text: textOf("A longer title") });
    expect(view.state.doc.toString()).toBe(textOf("A longer title"));
    expect(onTyped).not.toHaveBeenCalled();
    expect(view.state.sliceDoc(view.state.selection.main.head).startsWith('"tasks"')).toBe(true);
  });

  it("[WRT6] shows findings at their parts, and goes to a part", async () => {
    const { view, again } = await show();
    const { findings } = checkProcedureText(textOf("First"));
    expect(findings.length).toBeGreaterThan(0);
    again({ findings });
    const shown: string[] = [];
    forEachDiagnostic(view.state, ({ severity }, from) => {
      shown.push(`${severity} ${view.state.sliceDoc(from, from + 8)}`);
    });
    expect(shown).toContain('error "nobody"');
    again({ findings, goTo: { pointer: "/tasks/0/steps/0/after" } });
    expect(view.state.sliceDoc(view.state.selection.main.head).startsWith('"after"')).toBe(true);
  });

  it("[WRT6] survives findings of a text that was since typed away", async () => {
    const { view, again } = await show();
    const { findings } = checkProcedureText(textOf("First"));
    view.dispatch({ changes: { from: 0, to: view.state.doc.length } });
    again({ findings, unread: "" });
    expect(view.state.doc.length).toBe(0);
  });
});
