import { memo } from "react";
import type { Chapter } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { useReadAt } from "../worksite/index.ts";

interface ChapterListProps {
  readonly chapters: readonly Chapter[];
  readonly shown: ShownPet;
  readonly onChapter: (pet: Duration) => void;
}

/** The tasks as chapters, each of which can be gone to. The one that has begun last is the present one. */
export function ChapterList({ chapters, shown, onChapter }: ChapterListProps) {
  const present = useReadAt(shown, (pet) => chapters.findLast(({ start }) => start <= pet) ?? null);
  return <Chapters chapters={chapters} present={present} onChapter={onChapter} />;
}

interface ChaptersProps extends Omit<ChapterListProps, "shown"> {
  readonly present: Chapter | null;
}

/** Drawn again only when another task begins, and not with each picture. */
const Chapters = memo(function Chapters({ chapters, present, onChapter }: ChaptersProps) {
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
});
