import type { Briefing, QuizStop } from "../../core/briefing/index.ts";
import { personFacts } from "../../core/briefing/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";

interface QuizPanelProps {
  readonly briefing: Briefing;
  readonly stop: QuizStop;
  readonly isAnswered: boolean;
  readonly onAnswer: () => void;
  readonly onGoOn: () => void;
}

/** The question before a joint step, and its answer when it is asked for ([BRF7]). Nothing is scored or kept. */
export function QuizPanel({ briefing, stop, isAnswered, onAnswer, onGoOn }: QuizPanelProps) {
  const { outline } = briefing.course;
  const entry = outline.step(stop.step);
  return (
    <section className="brief-quiz" aria-label={words("brief/quiz")}>
      <p role="status">
        <b>
          {words("brief/quiz-asks", {
            number: entry?.number ?? stop.step,
            action: entry?.step.do ?? "",
            crew: callsOf(outline, stop.crew),
          })}
        </b>
      </p>
      <button type="button" className="main-button" onClick={isAnswered ? onGoOn : onAnswer}>
        {isAnswered ? words("brief/go-on") : words("brief/show-answer")}
      </button>
      {isAnswered && (
        <ul>
          {stop.answers.map(({ person, waited }) => {
            const { call, where, has } = personFacts(briefing.course, person);
            const told = {
              crew: call,
              where: where ? inWords(where) : words("brief/place-not-told"),
              has: has.length > 0 ? words("figures/list", { items: has }) : words("brief/nothing"),
            };
            return (
              <li key={person.crew}>
                {waited === null
                  ? words("brief/answer-last", told)
                  : words("brief/answer-waited", { ...told, time: waited })}
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}
