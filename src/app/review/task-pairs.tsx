import type { Review, TaskReview } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { behindTone, spanText } from "../parts/index.ts";
import { onTrack, PetScale, PetTrack } from "./pet-track.tsx";
import { isOnPlan, longerWords } from "./review-words.ts";

interface TaskPairsProps {
  readonly review: Review;
  readonly end: Duration;
}

/** Every task as planned and as flown, one bar below the other, with the difference in words. */
export function TaskPairs({ review, end }: TaskPairsProps) {
  return (
    <section className="review-part" aria-labelledby="review-tasks">
      <h2 id="review-tasks">{words("review/tasks")}</h2>
      <ol className="review-tasks">
        {review.tasks.map((task, index) => (
          <li key={task.task} className="review-task">
            <p className="review-task-name">
              <b>{index + 1}</b> {task.title}
            </p>
            <PetTrack end={end}>
              {task.planned && (
                <i className="review-planned" style={onTrack(task.planned.start, task.planned.finish, end)} />
              )}
              {task.actual && (
                <i className="review-flown" style={onTrack(task.actual.start, task.actual.finish, end)} />
              )}
            </PetTrack>
            <p className="review-task-words">
              <b data-tone={task.done < task.of ? behindTone(null) : behindTone(task.finishDifference)}>
                {outcome(task)}
              </b>
              <span>{detail(task)}</span>
            </p>
          </li>
        ))}
      </ol>
      <div className="review-task review-task-foot">
        <PetScale end={end} />
      </div>
      <ul className="review-signs">
        <li>
          <i className="review-sign review-planned" />
          {words("review/sign-planned")}
        </li>
        <li>
          <i className="review-sign review-flown" />
          {words("review/sign-flown")}
        </li>
      </ul>
    </section>
  );
}

/** How a task came out. Only one that is done to its last step finished earlier or later than planned. */
function outcome({ actual, planned, finishDifference, getAhead, skipped, done, of }: TaskReview): string {
  if (!actual) {
    if (of > 0 && skipped === of) return words("review/task-skipped");
    return words(getAhead ? "review/task-get-ahead-not-done" : "review/task-not-done");
  }
  if (done < of) return words("review/task-steps-done", { done, all: of });
  if (!planned) return words(getAhead ? "review/task-get-ahead-done" : "review/task-not-planned-done");
  if (finishDifference === null) return words("review/task-done");
  if (isOnPlan(finishDifference)) return words("review/task-on-plan");
  return words(finishDifference > 0 ? "review/task-later" : "review/task-earlier", {
    time: finishDifference,
  });
}

function detail({ actual, planned, timeDifference, done, of }: TaskReview): string {
  return [
    ...(planned ? [words("review/task-planned", { span: spanText(planned.start, planned.finish) })] : []),
    ...(actual ? [words("review/task-flown", { span: spanText(actual.start, actual.finish) })] : []),
    ...(timeDifference === null || done < of ? [] : [longerWords(timeDifference)]),
  ].join(" · ");
}
