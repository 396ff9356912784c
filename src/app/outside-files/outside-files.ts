/** A file that is looked at without being taken in: a procedure that is compared, an extract of a log. */
export interface OutsideFile {
  readonly name: string;
  readonly text: string;
}

const PREFIX = "file-";
const STORED_AS = "tetherline.outside.";

const known = new Map<string, OutsideFile>();

/** True for the key of a file from outside. */
export const isOutside = (key: string): boolean => key.startsWith(PREFIX);

/**
 * Keeps a file for as long as the page is open, so that it is found after a reload and by a printable page, and returns the key that names it. Where
 * the browser has no room for it, it lasts until the app is loaded anew.
 */
export function keepOutside(file: OutsideFile): string {
  let number = 1;
  while (outsideFile(`${PREFIX}${number}`) !== null) number += 1;
  const key = `${PREFIX}${number}`;
  known.set(key, file);
  try {
    sessionStorage.setItem(STORED_AS + key, JSON.stringify(file));
  } catch {
    // Its printable page will say that it is not there.
  }
  return key;
}

/** The file of a key; `null` when there is none, as after its page was closed. */
export function outsideFile(key: string): OutsideFile | null {
  const held = known.get(key);
  if (held || !isOutside(key)) return held ?? null;
  try {
    const text = sessionStorage.getItem(STORED_AS + key);
    const kept: unknown = text === null ? null : JSON.parse(text);
    if (!isFile(kept)) return null;
    known.set(key, kept);
    return kept;
  } catch {
    return null;
  }
}

const isFile = (value: unknown): value is OutsideFile =>
  typeof value === "object" &&
  value !== null &&
  "name" in value &&
  typeof value.name === "string" &&
  "text" in value &&
  typeof value.text === "string";
