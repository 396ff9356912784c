import ts from "typescript";

/** A text in the source that a person would read. */
export interface ShownLiteral {
  readonly line: number;
  readonly text: string;
}

/** Attributes whose value is read, or read out. */
const READ_ATTRIBUTES = new Set(["aria-label", "aria-valuetext", "title", "placeholder", "alt", "label"]);

/** Attributes whose value is drawing, layout or a name for machines, whatever blanks it has. */
const MACHINE_ATTRIBUTES = new Set([
  ...["className", "style", "d", "points", "transform", "viewBox", "preserveAspectRatio", "strokeDasharray"],
  ...["autoComplete", "accept", "sizes", "rel", "key", "content"],
]);

/** Errors whose message is a sentence for whoever named the file, the address or the argument; others are our own mistakes. */
const ERRORS_FOR_READERS = new Set([
  ...["InvalidArgumentError", "UnusableInputError", "UnusableProcedureError", "UnusableFileError"],
  ...["HubTroubleError", "UnreachableError", "TurnedAwayError", "HubRefusedError", "SaidError"],
  ...["EngineTroubleError", "CertificateTroubleError", "AnswerError"],
]);

/** Calls whose texts are for machines: patterns, separators, addresses, names of commands. What describes a schema is no message either. */
const MACHINE_CALLS = new Set([
  ...["split", "join", "replace", "replaceAll", "startsWith", "endsWith", "includes", "indexOf", "RegExp"],
  ...["prepare", "exec", "pragma", "matchMedia", "matches", "closest", "querySelector", "theme"],
  ...["querySelectorAll", "URL", "command", "option", "requiredOption", "argument", "stores", "connect"],
]);

/**
 * SQL, rules and media queries of CSS, the name of a format in one of its forms (`OMM (XML)`), and what protocols have: media types,
 * credentials, caching, lines of status and of an event stream, the first line of XML, formats of dates in a workbook.
 */
const NO_WORDS = [
  /^\s*(SELECT|INSERT|CREATE|PRAGMA|DELETE|UPDATE|BEGIN|ALTER|WITH|DROP|VACUUM|ATTACH)\b/,
  /^@[a-z-]+ \{|^\([a-z-]+: ?[^)]*\)$/,
  /^[A-Z]+ \([A-Z]+\)$/,
  /^[a-z]+\/[a-z-]+; charset=utf-8$/,
  /^Bearer $|^public, max-age=/,
  /^[1-5]\d\d [A-Z][A-Za-z ]+$|^HTTP\/1\.1 /,
  /^(id|event|data): /,
  /^<\?xml /,
  /^yyyy-mm-dd hh:mm:ss$/,
];

/** Two words with a blank between them, or a word beside something put in. */
const WORDS = /\p{L}{2,}[^\s\p{L}]*\s+[^\s\p{L}]*\p{L}{2,}/u;
const WORD_BESIDE = /(^|\s|[“"(])\p{L}{2,}[.,:;)”"]?\s|\s\p{L}{2,}[.,:;)”"]?($|\s)/u;
const LETTERS = /\p{L}/u;

const nameOf = (node: ts.Node): string =>
  ts.isIdentifier(node) ? node.text : ts.isPropertyAccessExpression(node) ? node.name.text : "";

/** The nearest attribute, call or error that a text is handed to, without leaving the function it stands in. */
function handedTo(
  node: ts.Node,
): { readonly kind: "attribute" | "call" | "error"; readonly name: string } | null {
  for (let at = node.parent; at && !ts.isSourceFile(at); at = at.parent) {
    if (ts.isJsxAttribute(at)) return { kind: "attribute", name: at.name.getText() };
    if (ts.isNewExpression(at)) {
      const name = nameOf(at.expression);
      return { kind: name.endsWith("Error") ? "error" : "call", name };
    }
    if (ts.isCallExpression(at) && at.expression !== node)
      return { kind: "call", name: nameOf(at.expression) };
    if (at.kind === ts.SyntaxKind.SuperKeyword) return { kind: "error", name: "" };
    if (ts.isArrowFunction(at) || ts.isFunctionLike(at) || ts.isBlock(at) || ts.isJsxElement(at)) return null;
  }
  return null;
}

/** Whether a text is no words by where it stands: a type, a module, a key, or a form that only machines read. */
function isForMachines(node: ts.Node, text: string): boolean {
  const { parent } = node;
  if (ts.isLiteralTypeNode(parent) || ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent))
    return true;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return true;
  if (ts.isTaggedTemplateExpression(parent) || NO_WORDS.some((pattern) => pattern.test(text))) return true;
  if (isKey(node)) return true;
  const to = handedTo(node);
  if (to?.kind === "attribute") return MACHINE_ATTRIBUTES.has(to.name);
  if (to?.kind === "error") return !ERRORS_FOR_READERS.has(to.name);
  return to?.kind === "call" && (MACHINE_CALLS.has(to.name) || /describe/i.test(to.name));
}

/** Whether a text is what a property, variable or function called `key…` holds or gives: a name that only machines read. */
function isKey(node: ts.Node): boolean {
  for (let at = node.parent; at && !ts.isSourceFile(at); at = at.parent) {
    if (ts.isPropertyAssignment(at) || ts.isVariableDeclaration(at) || ts.isFunctionDeclaration(at))
      return /^key/i.test(at.name?.getText() ?? "");
    if (ts.isBlock(at) || ts.isJsxElement(at)) return false;
  }
  return false;
}

/** Where a text comes to be drawn as it is, or read out, through conditions alone. */
function isDrawn(node: ts.Node): boolean {
  let at = node.parent;
  while (ts.isConditionalExpression(at) || ts.isBinaryExpression(at) || ts.isParenthesizedExpression(at)) {
    // What is asked is not what is shown.
    if (ts.isConditionalExpression(at) && at.condition === node) return false;
    if (ts.isBinaryExpression(at) && /[=<>]/.test(at.operatorToken.getText())) return false;
    [node, at] = [at, at.parent];
  }
  if (!ts.isJsxExpression(at)) return false;
  return !ts.isJsxAttribute(at.parent) || READ_ATTRIBUTES.has(at.parent.name.getText());
}

/** The fixed pieces of a template, with a mark where something is put in. */
const piecesOf = (node: ts.TemplateExpression): readonly string[] => [
  node.head.text,
  ...node.templateSpans.map(({ literal }) => literal.text),
];

/** Every text of a source file that looks as if a person read it. */
export function shownLiterals(path: string, source: string): readonly ShownLiteral[] {
  const kind = path.endsWith(".tsx") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true, kind);
  const found: ShownLiteral[] = [];
  const report = (node: ts.Node, text: string) => {
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    found.push({ line: line + 1, text: text.trim().slice(0, 60) });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isJsxText(node) && /\p{L}{2,}/u.test(node.text)) report(node, node.text);
    else if (ts.isStringLiteralLike(node)) {
      const attribute = ts.isJsxAttribute(node.parent) ? node.parent.name.getText() : "";
      const isRead = (READ_ATTRIBUTES.has(attribute) || isDrawn(node)) && LETTERS.test(node.text);
      if (isRead || (WORDS.test(node.text) && !isForMachines(node, node.text))) report(node, node.text);
    } else if (ts.isTemplateExpression(node)) {
      const pieces = piecesOf(node);
      const isWorded = pieces.some((piece) => WORDS.test(piece) || WORD_BESIDE.test(piece));
      if (isWorded && !isForMachines(node, pieces.join(""))) report(node, pieces.join("…"));
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}
