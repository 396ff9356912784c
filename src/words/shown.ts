import type { MessageFunction } from "messageformat/functions";

/** A function of a message whose value is shown and never selected on: `show` words the argument. */
export function shown(
  show: (input: unknown, options: Record<string, unknown>) => string,
): MessageFunction<string> {
  return (_, options, input) => {
    const text = show(input, options);
    return {
      type: "shown",
      toString: () => text,
      toParts: () => [{ type: "shown", value: text }],
      valueOf: () => input,
    };
  };
}
