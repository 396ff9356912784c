/** The file of a procedure as text. */
export const textPaneWords = {
  "text-pane/title": "The file as text",
  "text-pane/name": "The procedure as JSON",
  "text-pane/in-step": "The text and the procedure are in step.",
  "text-pane/unread":
    "What you typed cannot be read yet. The procedure stays as it was, and your text stays here.",
  "text-pane/keys":
    "Ctrl+Space completes, F8 goes to the next finding, Ctrl+Shift+M lists them all, and Tab leaves the text.",
} as const;
