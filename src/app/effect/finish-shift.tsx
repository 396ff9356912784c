import type { Sides } from "../../core/effect/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { minus } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import "./effect.css";

/** By how much the finish moves; nothing where one of the sides has none. */
export function FinishShift({ finish: { before, after } }: { readonly finish: Sides<Duration | null> }) {
  if (before === null || after === null) return null;
  const by = minus(after, before);
  return (
    <p className="effect-by">
      {by === 0
        ? words("effect/same-finish")
        : by > 0
          ? words("effect/later", { by })
          : words("effect/earlier", { by: -by as Duration })}
    </p>
  );
}
