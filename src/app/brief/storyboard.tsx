import { Fragment, useMemo } from "react";
import type { Briefing, BriefingKind, Frame } from "../../core/briefing/index.ts";
import { frameTime, frameTitle, personFacts, storyboardOf } from "../../core/briefing/index.ts";
import { pictureSource } from "../../core/procedure/index.ts";
import type { WorksiteGround } from "../../core/worksite/index.ts";
import { groundOf } from "../../core/worksite/index.ts";
import { inWords, words } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";
import { StrandMarks } from "../print/index.ts";
import { standingPet } from "../worksite/index.ts";
import { SitePicture } from "./site-picture.tsx";
import "./brief.css";
import "./storyboard.css";

const MAP = { width: 640, height: 420, zoom: 1 } as const;

/** A briefing on paper, landscape: a frame for each task, or for each scene that its author marked ([BRF3]). */
export function Storyboard({ briefing, kind }: { readonly briefing: Briefing; readonly kind: BriefingKind }) {
  const { procedure } = briefing.course.outline;
  const frames = useMemo(() => storyboardOf(briefing), [briefing]);
  const ground = useMemo(() => groundOf(procedure, MAP, inWords), [procedure]);
  return (
    <main className="print-sheet storyboard">
      <p className="print-tools">
        <button type="button" className="main-button" onClick={() => window.print()}>
          {words("print/print")}
        </button>
      </p>
      <header>
        <h1>{procedure.title}</h1>
        <p className="print-identity">
          {words(`brief/of-${kind}`)} · {procedure.id} ·{" "}
          {procedure.revision
            ? words("print/revision", { revision: procedure.revision })
            : words("print/no-revision")}
          {briefing.start !== null && ` · ${words("brief/pet-zero", { at: briefing.start })}`}
        </p>
        <p>{words("brief/advises")}</p>
      </header>
      {frames.map((frame) => (
        <FrameOnPaper key={frame.number} briefing={briefing} frame={frame} ground={ground} />
      ))}
    </main>
  );
}

const COLUMNS = ["who", "where", "does", "line"] as const;

function FrameOnPaper({
  briefing,
  frame,
  ground,
}: {
  readonly briefing: Briefing;
  readonly frame: Frame;
  readonly ground: WorksiteGround;
}) {
  const { course } = briefing;
  const shown = useMemo(() => standingPet(frame.pet), [frame.pet]);
  const pictures = frame.pictures.flatMap(
    (id) => course.outline.procedure.pictures.find((one) => one.id === id) ?? [],
  );
  return (
    <article className="storyboard-frame" data-pictures={pictures.length > 0 || undefined}>
      <h2>{inWords(frameTitle(frame))}</h2>
      <p className="storyboard-time">{inWords(frameTime(briefing, frame))}</p>
      <div className="storyboard-seen">
        <SitePicture
          ground={ground}
          course={course}
          shown={shown}
          name={words("brief/map-at", { pet: frame.pet })}
        />
      </div>
      <div className="storyboard-told">
        {frame.caption.map(({ said, kind, crew, step }) => (
          <p key={`${kind} ${crew.join()} ${step}`} dir="auto">
            <Worded message={said} />
          </p>
        ))}
        <table>
          <thead>
            <tr>
              {COLUMNS.map((name) => (
                <th key={name} scope="col">
                  {words(`brief/column-${name}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {frame.moment.people.map((person) => {
              const { where, does, line, has } = personFacts(course, person);
              return (
                <Fragment key={person.crew}>
                  <tr>
                    <th scope="row">
                      <StrandMarks outline={course.outline} by={[person.crew]} />
                    </th>
                    <td>{where && inWords(where)}</td>
                    <td>{inWords(does)}</td>
                    <td>{line && inWords(line)}</td>
                  </tr>
                  {has.length > 0 && (
                    <tr>
                      <td colSpan={4}>{words("brief/has", { items: has })}</td>
                    </tr>
                  )}
                </Fragment>
              );
            })}
          </tbody>
        </table>
      </div>
      {pictures.length > 0 && (
        <div className="storyboard-pictures">
          {pictures.map((picture) => (
            <figure key={picture.id}>
              <img src={pictureSource(picture)} alt={picture.label ?? picture.id} />
              <figcaption>{picture.label ?? picture.id}</figcaption>
            </figure>
          ))}
        </div>
      )}
      <div className="storyboard-alerts">
        {frame.alerts.map(({ step, number, alert }) => (
          <p key={`${step} ${alert.text}`} className={`print-alert-${alert.level}`} dir="auto">
            <b>
              {words(`parts/alert-${alert.level}`)} {number}
            </b>{" "}
            {alert.text}
          </p>
        ))}
      </div>
    </article>
  );
}
