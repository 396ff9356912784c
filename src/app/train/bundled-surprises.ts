/** The texts of the surprises that come with the app. Each is a chunk of its own, loaded when it is asked for. */
const texts = import.meta.glob<string>("../../../procedures/*.surprises.json", {
  query: "?raw",
  import: "default",
});

/** The text of the surprises that come with a procedure of the app, by its id; `null` when none do. Rejects when it cannot be loaded. */
export async function bundledSurprises(procedure: string): Promise<string | null> {
  const found = Object.entries(texts).find(([path]) => path.endsWith(`/${procedure}.surprises.json`));
  return found ? found[1]() : null;
}
