/** A number in the sequence of a source as entries have it as `sequence` and `id`: ten digits, so that it sorts as text. */
export function sequenceText(number: number): string {
  return String(number).padStart(10, "0");
}
