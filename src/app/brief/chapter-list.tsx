import type { Chapter } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** The tasks as chapters, each of which can be gone to. The one that has begun last is the present one. */
export function ChapterList({
  chapters,
  pet,
  onChapter,
}: {
  readonly chapters: readonly Chapter[];
  readonly pet: Duration;
  readonly onChapter: (pet: Duration) => void;
}) {
  const present = chapters.findLast(({ start }) => start <= pet);
  return (
    <nav className="brief-chapters" aria-label={words("brief/chapters")}>
      {chapters.map((chapter) => (
        <button
          key={chapter.task}
          type="button"
          className="plain-button"
          aria-current={chapter === present || undefined}
          onClick={() => onChapter(chapter.start)}
        >
          {words("brief/whole", { number: chapter.number, title: chapter.title })}
        </button>
      ))}
    </nav>
  );
}
