import type { AmendmentEffect, Sides } from "../../core/effect/index.ts";
import type { Risk } from "../../core/plan/index.ts";
import type { Finding } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { minus } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";

interface EffectViewProps {
  readonly effect: AmendmentEffect;
  /** The samples of both sides; `null` for those that are still being sampled, or cannot be. */
  readonly risk: Sides<Risk | null>;
}

interface EffectRow {
  readonly what: string;
  readonly sides: Sides<string>;
}

const spareWords = (time: Duration | null) =>
  time === null
    ? words("amending/none")
    : words(time < 0 ? "amending/over" : "amending/spare", { time: (time < 0 ? -time : time) as Duration });

const atWords = (at: Duration | null, otherwise: string) =>
  at === null ? otherwise : words("panel/at", { at });

const both = <Value,>({ before, after }: Sides<Value>, text: (value: Value) => string): Sides<string> => ({
  before: text(before),
  after: text(after),
});

/** The figures of an effect, in the order in which they are read out. */
function rowsOf({ effect, risk }: EffectViewProps): readonly EffectRow[] {
  const { outlook, home, turnBack, windows, supplies, ledger } = effect;
  const { outline } = ledger.inForce;
  const limit = outline.procedure.limits.elapsed ?? null;
  const sampled = (of: (one: Risk) => string) =>
    both(risk, (one) => (one === null ? words("amending/sampling") : of(one)));
  const whole = (at: number | null) =>
    at === null ? words("amending/not-known") : words("panel/at", { at: Math.ceil(at) as Duration });
  const length = (time: Duration | null) =>
    time === null ? words("amending/not-known") : words("figures/length", { time });
  return [
    {
      what: words("amending/finish"),
      sides: both(outlook, ({ forecast }) => atWords(forecast.finish, words("amending/no-forecast"))),
    },
    ...(limit === null
      ? []
      : [
          {
            what: words("amending/margin"),
            sides: both(outlook, ({ forecast }) => spareWords(forecast.margin)),
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
    { what: words("amending/home"), sides: both(home, length) },
    {
      what: words("amending/turn-back"),
      sides: both(turnBack, (at) => (at === null ? words("amending/none") : words("amending/clock", { at }))),
    },
    ...windows.map(({ window, margin }) => ({
      what: words("amending/window-margin", {
        window: outline.procedure.windows.find(({ id }) => id === window)?.label ?? window,
      }),
      sides: both(margin, (one) => spareWords(one?.margin ?? null)),
    })),
    ...supplies.map(({ supply, left }) => ({
      what: words("amending/supply-left", {
        supply: supply.label ?? supply.id,
        crew: outline.crewMember(supply.crew)?.call ?? supply.crew,
      }),
      sides: both(left, spareWords),
    })),
  ];
}

/** What an amendment would come to, beside what the walk comes to without it ([AMD3]). */
export function EffectView(props: EffectViewProps) {
  const { findings, outlook } = props.effect;
  const [before, after] = [outlook.before.forecast.finish, outlook.after.forecast.finish];
  const by = before === null || after === null ? null : minus(after, before);
  return (
    <section aria-label={words("amending/effect")} className="amend-effect">
      <h3>{words("amending/effect")}</h3>
      {by !== null && (
        <p className="amend-by">
          {by === 0
            ? words("amending/same-finish")
            : by > 0
              ? words("amending/later", { by })
              : words("amending/earlier", { by: -by as Duration })}
        </p>
      )}
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">{words("amending/now")}</th>
            <th scope="col">{words("amending/then")}</th>
          </tr>
        </thead>
        <tbody>
          {rowsOf(props).map(({ what, sides }) => (
            <tr key={what} data-same={sides.before === sides.after || undefined}>
              <th scope="row">{what}</th>
              <td>{sides.before}</td>
              <td>{sides.after}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {findings.new.length === 0 && findings.gone.length === 0 && (
        <p className="hint">{words("amending/no-findings")}</p>
      )}
      <FindingList title={words("amending/findings-new")} findings={findings.new} />
      <FindingList title={words("amending/findings-gone")} findings={findings.gone} />
    </section>
  );
}

function FindingList({ title, findings }: { readonly title: string; readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <>
      <h4>{title}</h4>
      <ul>
        {findings.map(({ code, pointer, level, message }) => (
          <li key={`${code} ${pointer} ${inWords(message)}`} data-level={level}>
            {inWords(message)}
          </li>
        ))}
      </ul>
    </>
  );
}
