/** What follows an option that any command may have, wherever it stands; empty at the end of the line, `null` without the option. */
export function givenFor(option: string, args: readonly string[]): string | null {
  const at = args.findIndex((one) => one === option || one.startsWith(`${option}=`));
  if (at < 0) return null;
  return args[at] === option ? (args[at + 1] ?? "") : (args[at] ?? "").slice(option.length + 1);
}
