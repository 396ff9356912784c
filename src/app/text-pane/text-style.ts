import { EditorView } from "@codemirror/view";

/** How the text looks: by the variables of the theme, which reach into the shadow root that the editor stands in. */
export const textStyle = EditorView.theme({
  "&": {
    height: "min(70vh, 44rem)",
    border: "1px solid var(--edge)",
    borderRadius: "var(--corner)",
    background: "var(--sheet)",
    color: "var(--ink)",
    fontSize: "var(--type-small)",
    textAlign: "left",
  },
  "&.cm-focused": { outline: "3px solid var(--focus)", outlineOffset: "1px" },
  ".cm-scroller": { fontFamily: "var(--face-code)", lineHeight: "1.5" },
  ".cm-gutters": {
    borderRight: "1px solid var(--rule)",
    background: "var(--wash)",
    color: "var(--soft)",
  },
  ".cm-cursor": { borderLeft: "2px solid var(--ink)" },
  ".cm-selectionBackground, &.cm-focused .cm-selectionBackground": {
    background: "var(--contact) !important",
  },
  ".cm-tooltip, .cm-panels": {
    border: "1px solid var(--edge)",
    background: "var(--sheet)",
    color: "var(--ink)",
  },
  ".cm-tooltip-autocomplete > ul > li": { minHeight: "32px", padding: "4px 8px" },
  ".cm-tooltip-autocomplete > ul > li[aria-selected]": {
    background: "var(--action)",
    color: "var(--action-ink)",
  },
  ".text-pane-says": {
    maxWidth: "30rem",
    padding: "var(--space-2) var(--space-3)",
    fontFamily: "var(--face)",
  },
  ".text-pane-says, .cm-diagnostic": { unicodeBidi: "plaintext", textAlign: "start" },
});
