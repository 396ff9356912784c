/** What an error says, as the end of a sentence, whether or not it is one itself. */
export function errorWords(error: unknown): string {
  const words = error instanceof Error && error.message !== "" ? error.message : "unknown error";
  return /[.!?]$/.test(words) ? words : `${words}.`;
}
