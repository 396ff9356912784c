import {
  autocompletion,
  closeBrackets,
  closeBracketsKeymap,
  completionKeymap,
} from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { json } from "@codemirror/lang-json";
import { bracketMatching, foldGutter, foldKeymap, indentOnInput, indentUnit } from "@codemirror/language";
import type { Diagnostic } from "@codemirror/lint";
import { lintGutter, lintKeymap, setDiagnostics } from "@codemirror/lint";
import { Annotation, EditorState } from "@codemirror/state";
import { drawSelection, EditorView, hoverTooltip, keymap, lineNumbers } from "@codemirror/view";
import type { Finding } from "../../core/procedure/index.ts";
import { inWords } from "../../words/index.ts";
import { completionsAt, explanationAt } from "./at-cursor.ts";
import { differingStretch, partsOf } from "./part-at.ts";
import { textStyle } from "./text-style.ts";

/** Marks what was put in from outside, which nobody typed. */
const fromOutside = Annotation.define<true>();

/** What a text editor is made with. */
export interface TextEditorParts {
  readonly parent: HTMLElement;
  readonly text: string;
  /** Its name for those who do not see it. */
  readonly label: string;
  /** Called with the whole text after each change by whoever types, and never for one from outside. */
  readonly onTyped: (text: string) => void;
}

const SEVERITY = { error: "error", caution: "warning", advice: "info" } as const;

/** An editor of a procedure's JSON, with completion, explanations and findings ([WRT6]). */
export class TextEditor {
  readonly #host: HTMLElement;
  readonly #view: EditorView;

  constructor({ parent, text, label, onTyped }: TextEditorParts) {
    // The library's styles may not be put into the document, by the content security policy; a shadow root adopts them.
    this.#host = document.createElement("div");
    // JSON runs from left to right in every language ([WRD3]); what is said of it runs in its own direction.
    this.#host.dir = "ltr";
    parent.append(this.#host);
    const root = this.#host.attachShadow({ mode: "open" });
    this.#view = new EditorView({
      parent: root as unknown as HTMLElement,
      root,
      state: EditorState.create({
        doc: text,
        extensions: [
          lineNumbers(),
          foldGutter(),
          history(),
          drawSelection(),
          indentOnInput(),
          indentUnit.of("  "),
          bracketMatching(),
          closeBrackets(),
          json(),
          lintGutter(),
          autocompletion({ override: [completionSource] }),
          explanations,
          // Tab leaves the pane, as everywhere: indenting is done by the layout of the lines.
          keymap.of([
            ...closeBracketsKeymap,
            ...defaultKeymap,
            ...historyKeymap,
            ...foldKeymap,
            ...completionKeymap,
            ...lintKeymap,
          ]),
          EditorView.lineWrapping,
          textStyle,
          EditorView.contentAttributes.of({ "aria-label": label }),
          EditorView.updateListener.of(({ docChanged, state, transactions }) => {
            if (docChanged && !transactions.some((one) => one.annotation(fromOutside)))
              onTyped(state.doc.toString());
          }),
        ],
      }),
    });
  }

  /** Puts in what differs of a text from outside; the cursor stays at what it stood at. */
  setText(text: string): void {
    const before = this.#view.state.doc.toString();
    if (before === text) return;
    this.#view.dispatch({ changes: differingStretch(before, text), annotations: fromOutside.of(true) });
  }

  /** Shows findings at the parts that they are about. */
  setFindings(findings: readonly Finding[]): void {
    const { state } = this.#view;
    const partAt = partsOf(state.doc.toString());
    const diagnostics = findings.map((finding): Diagnostic => {
      const part = partAt(finding.pointer);
      const line = finding.position && finding.pointer === "" ? lineOf(state, finding.position.line) : null;
      // A finding about much is shown at its first line, so that the text stays legible.
      const from = line?.from ?? part.from;
      const to = Math.min(line?.to ?? part.to, state.doc.lineAt(Math.min(from, state.doc.length)).to);
      return {
        from,
        to: Math.max(from, to),
        severity: SEVERITY[finding.level],
        message: inWords(finding.message),
      };
    });
    this.#view.dispatch(setDiagnostics(state, diagnostics));
  }

  /** Goes to a part, puts the cursor there and brings it into view. */
  goTo(pointer: string): void {
    const { from } = partsOf(this.#view.state.doc.toString())(pointer);
    this.#view.dispatch({
      selection: { anchor: from },
      effects: EditorView.scrollIntoView(from, { y: "center" }),
    });
    this.#view.focus();
  }

  /** Takes the editor away. */
  end(): void {
    this.#view.destroy();
    this.#host.remove();
  }
}

function lineOf(state: EditorState, number: number) {
  return number <= state.doc.lines ? state.doc.line(number) : null;
}

function completionSource({ state, pos, explicit }: { state: EditorState; pos: number; explicit: boolean }) {
  const text = state.doc.toString();
  const found = completionsAt(text, pos);
  if (!found || (!explicit && found.from === pos)) return null;
  return {
    from: found.from,
    to: found.to,
    options: found.completions.map(({ text: label, says }) => ({ label, detail: says })),
  };
}

const explanations = hoverTooltip(({ state }, pos) => {
  const said = explanationAt(state.doc.toString(), pos);
  if (said === null) return null;
  return {
    pos,
    create: () => {
      const dom = document.createElement("div");
      dom.className = "text-pane-says";
      dom.textContent = said;
      return { dom };
    },
  };
});
