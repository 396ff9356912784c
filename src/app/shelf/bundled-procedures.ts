/** The procedures that come with the app, by file name, each as the address of its text. */
const addresses = import.meta.glob<string>("../../../procedures/*.procedure.json", {
  query: "?url",
  import: "default",
  eager: true,
});

/** A procedure text on the shelf, whether it came with the app or was imported. */
export interface ShelfText {
  /** Names it in addresses of the app. */
  readonly key: string;
  readonly text: string;
  /** False when it came with the app and cannot be removed. */
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

/** A text that could not be loaded from the app's own files. */
export class MissingProcedureError extends Error {
  override readonly name = "MissingProcedureError";
}

async function textAt(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new MissingProcedureError(`${address}: ${response.status}`);
  return response.text();
}
