import type { Briefing } from "../../core/briefing/index.ts";
import { captionGrain, presenterAt } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { useReadAt } from "../worksite/index.ts";

/** What the presenter sees and the audience does not: notes, what comes next, the time left, the alerts ahead ([BRF2]). */
export function PresenterPanel({
  briefing,
  shown,
  speed,
}: {
  readonly briefing: Briefing;
  readonly shown: ShownPet;
  readonly speed: Parameters<typeof captionGrain>[0];
}) {
  const pet = useReadAt(shown, (at) => at);
  const { notes, nextAt, nextCaption, left, alerts } = presenterAt(briefing, pet, captionGrain(speed));
  return (
    <aside className="brief-presenter" aria-label={words("brief/for-presenter")}>
      <section>
        <h2>{words("brief/notes")}</h2>
        {notes.length === 0 && <p className="hint">{words("brief/no-notes")}</p>}
        {notes.map(({ step, text }) => (
          <p key={`${step} ${text}`} dir="auto">
            {text}
          </p>
        ))}
      </section>
      <section>
        <h2>{nextAt === null ? words("brief/nothing-next") : words("brief/next-at", { pet: nextAt })}</h2>
        {nextCaption.map(({ said, kind, crew, step }) => (
          <p key={`${kind} ${crew.join()} ${step}`} dir="auto">
            <Worded message={said} />
          </p>
        ))}
      </section>
      <section>
        <h2>{words("brief/left")}</h2>
        <p>{words("brief/left-both", { time: left, shown: Math.ceil(left / speed) as Duration, speed })}</p>
      </section>
      <section>
        {alerts.length > 0 && <h2>{words("brief/alerts-ahead")}</h2>}
        {alerts.map(({ step, number, alert, pet: at }) => (
          <p key={`${step} ${alert.text}`} data-level={alert.level} dir="auto">
            <b>
              {words(`parts/alert-${alert.level}`)} {number}
            </b>{" "}
            {words("brief/alert-at", { pet: at })} {alert.text}
          </p>
        ))}
      </section>
    </aside>
  );
}
