import { describe, expect, expectTypeOf, it } from "vitest";
import type { Duration, Instant } from "../../src/core/units/index.ts";
import type { Message, MessageArguments } from "../../src/words/index.ts";
import { inWords, message, words } from "../../src/words/index.ts";

describe("a message", () => {
  it("[WRD1] is frozen data: its key and its arguments, no words", () => {
    const said = message("parts/revision", { revision: "B" });
    expect(said).toEqual({ key: "parts/revision", arguments: { revision: "B" } });
    expect(Object.isFrozen(said)).toBe(true);
    expect(Object.isFrozen(said.arguments)).toBe(true);
    expect(message("parts/shelf")).toEqual({ key: "parts/shelf", arguments: {} });
    expect(structuredClone(said)).toEqual(said);
    expect(inWords(JSON.parse(JSON.stringify(said)) as Message)).toBe("rev. B");
  });

  it("[WRD1] keeps the arguments it was made with", () => {
    const given = { revision: "B" };
    const said = message("parts/revision", given);
    given.revision = "C";
    expect(inWords(said)).toBe("rev. B");
  });

  it("[WRD1] has the arguments that its English text names, typed", () => {
    expectTypeOf<MessageArguments<"parts/revision">>().toEqualTypeOf<{ readonly revision: string }>();
    expectTypeOf<MessageArguments<"shelf/errors">>().toEqualTypeOf<{ readonly count: number }>();
    expectTypeOf<MessageArguments<"shelf/opened">>().toEqualTypeOf<{ readonly at: Instant }>();
    expectTypeOf<MessageArguments<"follow/planned">>().toEqualTypeOf<{
      readonly start: Duration;
      readonly finish: Duration;
    }>();
    expectTypeOf<MessageArguments<"parts/shelf">>().toEqualTypeOf<Record<never, never>>();
    expectTypeOf<MessageArguments<"shelf/finding-at-line">["finding"]>().toEqualTypeOf<string | Message>();
  });

  it("[WRD1] takes no other arguments than those, by its types", () => {
    // Only its types are looked at: nothing here is called.
    const wrong = () => [
      // @ts-expect-error: an argument is missing
      message("parts/revision"),
      // @ts-expect-error: an argument is missing
      message("read/line-column", { line: 1 }),
      // @ts-expect-error: a number is wanted
      message("shelf/errors", { count: "3" }),
      // @ts-expect-error: a text is wanted
      message("parts/revision", { revision: 3 }),
      // @ts-expect-error: a duration is wanted
      message("figures/length", { time: 3 }),
      // @ts-expect-error: it has no such argument
      message("parts/revision", { revision: "B", of: "the file" }),
      // @ts-expect-error: it takes none
      message("parts/shelf", { revision: "B" }),
      // @ts-expect-error: there is no such message
      message("parts/no-such"),
      // @ts-expect-error: the same holds where it is put in words at once
      words("shelf/errors", { count: "3" }),
    ];
    expect(wrong).toBeTypeOf("function");
  });
});
