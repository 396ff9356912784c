/** A code as it is read aloud: capital letters in groups of three. */
export function codeText(code: string): string {
  return (
    code
      .toUpperCase()
      .replaceAll(/[^A-Z0-9]/g, "")
      .match(/.{1,3}/g) ?? []
  ).join("-");
}
