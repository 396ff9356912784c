import { windowLabel } from "../../core/course/index.ts";
import type { AmendmentEffect, Sides } from "../../core/effect/index.ts";
import type { Risk } from "../../core/plan/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { SidesRow } from "../effect/index.ts";
import {
  bothInWords,
  FindingChanges,
  FinishShift,
  finishWords,
  SidesTable,
  spareWords,
} from "../effect/index.ts";

interface EffectViewProps {
  readonly effect: AmendmentEffect;
  /** The samples of both sides; `null` for those that are still being sampled, or cannot be. */
  readonly risk: Sides<Risk | null>;
}

/** The figures of an effect, in the order in which they are read out. */
function rowsOf({ effect, risk }: EffectViewProps): readonly SidesRow[] {
  const { outlook, home, turnBack, windows, supplies, ledger } = effect;
  const { outline } = ledger.inForce;
  const limit = outline.procedure.limits.elapsed ?? null;
  const sampled = (of: (one: Risk) => string) =>
    bothInWords(risk, (one) => (one === null ? words("amending/sampling") : of(one)));
  const whole = (at: number | null) =>
    at === null ? words("amending/not-known") : words("panel/at", { at: Math.ceil(at) as Duration });
  const length = (time: Duration | null) =>
    time === null ? words("amending/not-known") : words("figures/length", { time });
  return [
    {
      what: words("amending/finish"),
      sides: bothInWords(outlook, ({ forecast }) =>
        finishWords(forecast.finish, words("amending/no-forecast")),
      ),
    },
    ...(limit === null
      ? []
      : [
          {
            what: words("amending/margin"),
            sides: bothInWords(outlook, ({ forecast }) => spareWords(forecast.margin)),
          },
        ]),
    { what: words("amending/half"), sides: sampled(({ p50 }) => whole(p50)) },
    { what: words("amending/nine"), sides: sampled(({ p90 }) => whole(p90)) },
    ...(limit === null
      ? []
      : [
          {
            what: words("amending/chance"),
            sides: sampled(({ withinLimit }) =>
              withinLimit === null
                ? words("amending/not-known")
                : words("figures/chance", { share: withinLimit }),
            ),
          },
        ]),
    { what: words("amending/home"), sides: bothInWords(home, length) },
    {
      what: words("amending/turn-back"),
      sides: bothInWords(turnBack, (at) =>
        at === null ? words("effect/none") : words("amending/clock", { at }),
      ),
    },
    ...windows.map(({ window, margin }) => ({
      what: words("amending/window-margin", {
        window: windowLabel(outline, window),
      }),
      sides: bothInWords(margin, (one) => spareWords(one?.margin ?? null)),
    })),
    ...supplies.map(({ supply, left }) => ({
      what: words("amending/supply-left", {
        supply: supply.label ?? supply.id,
        crew: outline.crewMember(supply.crew)?.call ?? supply.crew,
      }),
      sides: bothInWords(left, spareWords),
    })),
  ];
}

/** What an amendment would come to, beside what the walk comes to without it ([AMD3]). */
export function EffectView(props: EffectViewProps) {
  const { findings, outlook } = props.effect;
  return (
    <section aria-label={words("amending/effect")}>
      <h3>{words("amending/effect")}</h3>
      <FinishShift
        finish={{ before: outlook.before.forecast.finish, after: outlook.after.forecast.finish }}
      />
      <SidesTable
        heads={{ before: words("amending/now"), after: words("amending/then") }}
        rows={rowsOf(props)}
      />
      <FindingChanges findings={findings} />
    </section>
  );
}
