import { useEffect, useRef, useState } from "react";
import type { Briefing, BriefingKind, Speed } from "../../core/briefing/index.ts";
import { filmOf } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { saveFile } from "../../io/browser-files/index.ts";
import { words } from "../../words/index.ts";
import { errorWords, SelectField } from "../parts/index.ts";

/** Slower ones would last for an hour, and nobody looks at a film for that long. */
const FILM_SPEEDS = [10, 30, 60, 120] as const satisfies readonly Speed[];

interface FilmFormProps {
  readonly briefing: Briefing;
  readonly kind: BriefingKind;
}

/** How a film stands that is being made. */
interface Making {
  readonly made: number;
  readonly of: number;
  /** About how long it still takes, by the pace so far; `null` before there is one. */
  readonly left: Duration | null;
}

/** Makes a film of a briefing and saves it, with its progress and a way to cancel ([BRF6]). */
export function FilmForm({ briefing, kind }: FilmFormProps) {
  const [speed, setSpeed] = useState<Speed>(60);
  const [making, setMaking] = useState<Making | null>(null);
  const [told, setTold] = useState<string | null>(null);
  const cancelling = useRef<AbortController | null>(null);
  useEffect(() => () => cancelling.current?.abort(), []);
  const make = async () => {
    const cancel = new AbortController();
    cancelling.current = cancel;
    const film = filmOf(briefing, speed);
    const began = performance.now();
    setTold(null);
    setMaking({ made: 0, of: film.pictures, left: null });
    try {
      // What paints and encodes is loaded when a film is asked for.
      const [{ FilmPainter }, { makeFilm }] = await Promise.all([
        import("./film-painter.ts"),
        import("./make-film.ts"),
      ]);
      const painter = await FilmPainter.open({ briefing, kind, speed });
      const made =
        painter &&
        (await makeFilm({
          film,
          canvas: painter.canvas,
          paint: (pet) => painter.paint(pet),
          signal: cancel.signal,
          onPicture: (count) => {
            const pace = (performance.now() - began) / count;
            const left = Math.ceil(pace * (film.pictures - count)) as Duration;
            setMaking({ made: count, of: film.pictures, left });
          },
        }));
      if (!made) setTold(words("brief/film-not-here"));
      else {
        const name = `${briefing.course.outline.procedure.id}.briefing${made.ending}`;
        await saveFile(name, new Blob([made.bytes], { type: made.type }), made.type);
        setTold(words("brief/film-made", { name }));
      }
    } catch (error) {
      setTold(
        cancel.signal.aborted
          ? words("brief/film-cancelled")
          : words("parts/did-not-work", { why: errorWords(error) }),
      );
    }
    setMaking(null);
  };
  return (
    <section className="brief-film" aria-label={words("brief/film")}>
      {making ? (
        <>
          <progress value={making.made} max={making.of} aria-label={words("brief/film-progress")} />
          <p role="status">
            {words("brief/film-pictures", { made: making.made, of: making.of })}
            {making.left !== null && ` · ${words("brief/film-left", { left: making.left })}`}
          </p>
          <button type="button" className="plain-button" onClick={() => cancelling.current?.abort()}>
            {words("brief/film-cancel")}
          </button>
        </>
      ) : (
        <>
          <SelectField
            label={words("brief/film-speed")}
            choices={FILM_SPEEDS.map((one) => ({
              id: String(one),
              name: words("brief/film-lasts", { speed: one, length: filmOf(briefing, one).length }),
            }))}
            value={String(speed)}
            onValue={(next) => setSpeed(FILM_SPEEDS.find((one) => String(one) === next) ?? speed)}
          />
          <button type="button" className="main-button" onClick={() => void make()}>
            {words("brief/film-make")}
          </button>
          <p className="hint">{words("brief/film-how")}</p>
        </>
      )}
      {told !== null && <p role="status">{told}</p>}
    </section>
  );
}
