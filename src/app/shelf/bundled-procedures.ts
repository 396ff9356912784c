/** The addresses of the texts of the procedures that come with the app, by file name. */
const addresses = import.meta.glob<string>("../../../procedures/*.procedure.json", {
  query: "?url",
  import: "default",
  eager: true,
});

/** The text of a procedure on the shelf, whether it came with the app or was imported. */
export interface ShelfText {
  /** Identifies the text in addresses of the app. */
  readonly key: string;
  readonly text: string;
  /** False for a text that came with the app and cannot be removed. */
  readonly isImported: boolean;
}

const keyOf = (path: string) => path.replace(/^.*\//, "").replace(".procedure.json", "");

/** The texts of the procedures that come with the app. Rejects when one cannot be loaded. */
export async function bundledProcedures(): Promise<readonly ShelfText[]> {
  return Promise.all(
    Object.entries(addresses).map(async ([path, address]) => ({
      key: `example-${keyOf(path)}`,
      text: await textAt(address),
      isImported: false,
    })),
  );
}

/** Thrown when a text among the app's own files cannot be loaded. */
export class MissingProcedureError extends Error {
  override readonly name = "MissingProcedureError";
}

async function textAt(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new MissingProcedureError(`${address}: ${response.status}`);
  return response.text();
}
