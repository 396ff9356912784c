import type { FormEvent } from "react";
import { useId, useState } from "react";
import type { Procedure, ProcedureFile } from "../../core/procedure/index.ts";
import type { Duration, Metres, PlaceId } from "../../core/units/index.ts";
import { formatDuration, parseDuration } from "../../core/units/index.ts";
import { measuredLength } from "../../core/worksite/index.ts";
import type { PlacePair } from "../../core/write/index.ts";
import { offeredTime } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import type { Choice } from "./field-schema.ts";
import { LineField } from "./line-field.tsx";
import { minutesText, typedDuration } from "./minutes-text.ts";

/** The ends of a way as far as they are chosen; an empty text for one that is not. */
export type WayEnds = readonly [string, string];

interface WayFormProps {
  readonly file: ProcedureFile;
  readonly procedure: Procedure;
  readonly places: readonly Choice[];
  readonly ends: WayEnds;
  readonly onEnds: (ends: WayEnds) => void;
  readonly onWay: (
    pair: PlacePair,
    way: { readonly length: Metres | null; readonly time: Duration | null },
  ) => void;
}

const typedMetres = (text: string): Metres | null => {
  const metres = Number(text.trim().replace(",", "."));
  return text.trim() === "" || !Number.isFinite(metres) || metres < 0 ? null : (metres as Metres);
};

/** The two ends of a way, which may be tapped on the map, its length as measured, and the time that it takes ([WRT5]). */
export function WayForm({ file, procedure, places, ends, onEnds, onWay }: WayFormProps) {
  const heading = useId();
  const [one, other] = ends;
  const choices = [{ id: "", name: words("write/way-none") }, ...places];
  const measured =
    one !== "" && other !== "" && one !== other
      ? measuredLength(procedure, one as PlaceId, other as PlaceId)
      : null;
  // What was typed is of the two places that it was typed for.
  const [typed, setTyped] = useState<{
    readonly of: string;
    readonly length?: string;
    readonly time?: string;
  }>({
    of: "",
  });
  const of = ends.join(" ");
  const own = typed.of === of ? typed : { of };
  const lengthText = own.length ?? (measured === null ? "" : String(measured));
  const timeText = own.time ?? "";
  const length = typedMetres(lengthText);
  const time = timeText.trim() === "" ? null : typedDuration(timeText);
  const offer = length === null ? null : offeredTime(file, length);
  const isTimeWrong = timeText.trim() !== "" && time === null;
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (!isTimeWrong) onWay(ends, { length, time: time === null ? null : parseDuration(time) });
  };
  return (
    <form className="write-form way-form" aria-labelledby={heading} onSubmit={send}>
      <h3 id={heading}>{words("write/way")}</h3>
      <SelectField
        label={words("write/way-from")}
        choices={choices}
        value={one}
        onValue={(id) => onEnds([id, other])}
      />
      <SelectField
        label={words("write/way-to")}
        choices={choices}
        value={other}
        onValue={(id) => onEnds([one, id])}
      />
      <LineField
        inputMode="decimal"
        label={words("write/way-length")}
        value={lengthText}
        onValue={(text) => setTyped({ ...own, length: text })}
      />
      <p className="hint">
        {one === "" || other === "" || one === other
          ? null
          : measured === null
            ? words("write/way-not-measured")
            : words("write/way-measured", { length: measured })}
      </p>
      {measured !== null && length !== null && length < measured && (
        <p role="alert">{words("write/way-shorter")}</p>
      )}
      <LineField
        inputMode="decimal"
        label={words("write/way-time")}
        value={timeText}
        onValue={(text) => setTyped({ ...own, time: text })}
      />
      {isTimeWrong && <p role="alert">{words("write/not-a-value")}</p>}
      <p className="hint">
        {offer
          ? words("write/way-take-from", { time: offer.time, one: offer.from[0], other: offer.from[1] })
          : length !== null && words("write/way-no-pace")}{" "}
        {timeText.trim() === "" && words("write/way-without-time")}
      </p>
      <div className="panel-acts">
        {offer && (
          <button
            type="button"
            className="plain-button"
            onClick={() => setTyped({ ...own, time: minutesText(formatDuration(offer.time)) })}
          >
            {words("write/way-take", { time: offer.time })}
          </button>
        )}
        <button type="submit" className="main-button">
          {words("write/way-put")}
        </button>
      </div>
    </form>
  );
}
