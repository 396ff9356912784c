const PRINTED =
  /^\/(print|cards|poster|(?:storyboard|audience)(?:-walk)?|print-walk|print-paper|print-compare|handover)\/([^/]+)\/?$/;

/** What a path asks to be laid out for paper, and of which procedure or walk; `null` for a path of a screen. */
export function printedAt(path: string): { readonly kind: string; readonly id: string } | null {
  const [, kind, name] = PRINTED.exec(path) ?? [];
  return kind === undefined || name === undefined ? null : { kind, id: decodeURIComponent(name) };
}
