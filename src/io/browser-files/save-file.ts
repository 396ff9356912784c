/** What became of a file that was to be saved; `cancelled` when the reader closed the share sheet. */
export type SavedFile = "saved" | "shared" | "cancelled";

/** How long an address for a download is kept: browsers read from it after the click. */
const KEPT_FOR = 60_000;

/**
 * Hands a text, or what was written by a library, to the reader as a file. On a touch screen that offers to share such files the share sheet is shown, since
 * a tablet's downloads are hard to find; anywhere else it is a download. Call it from a tap or a key.
 */
export async function saveFile(
  name: string,
  content: string | Blob,
  type = "application/json",
): Promise<SavedFile> {
  const isText = typeof content === "string";
  const file = new File([content], name, { type: isText ? `${type};charset=utf-8` : type });
  if (offersSharing(file)) {
    try {
      await navigator.share({ files: [file], title: name });
      return "shared";
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return "cancelled";
      // Refused for any other reason: the download still works.
    }
  }
  download(file);
  return "saved";
}

function offersSharing(file: File): boolean {
  const isTouch = window.matchMedia("(pointer: coarse)").matches;
  return isTouch && typeof navigator.canShare === "function" && navigator.canShare({ files: [file] });
}

function download(file: File): void {
  const address = URL.createObjectURL(file);
  const anchor = document.createElement("a");
  anchor.href = address;
  anchor.download = file.name;
  anchor.hidden = true;
  document.body.append(anchor);
  anchor.click();
  anchor.remove();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_FOR);
}
