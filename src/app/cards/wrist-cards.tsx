import { useState } from "react";
import type { Course } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { StoredChoice } from "../session/index.ts";
import type { CardSize } from "./card-size.ts";
import { CARD_SIZES, LARGEST, lengthWithin, SMALLEST } from "./card-size.ts";
import { CrewMemberCards } from "./crew-member-cards.tsx";
import "./cards.css";

interface WristCardsProps {
  readonly outline: Outline;
  /** The plan whose times stand beside the steps; `null` without one. */
  readonly course: Course | null;
  readonly printedAt: Instant;
}

const chosenSize = new StoredChoice<CardSize>("tetherline.card-size", CARD_SIZES.large);

/** A size that was kept on the device, which may be of another version; the large one when it is not sound. */
function keptSize(): CardSize {
  const { width, height } = chosenSize.current();
  const kept = {
    width: lengthWithin(String(width), SMALLEST.width, LARGEST.width),
    height: lengthWithin(String(height), SMALLEST.height, LARGEST.height),
  };
  return kept.width === null || kept.height === null
    ? CARD_SIZES.large
    : { width: kept.width, height: kept.height };
}

/** The cards that the people outside wear on the wrist, to be printed and cut out ([CRD1]). */
export function WristCards({ outline, course, printedAt }: WristCardsProps) {
  const [size, setSize] = useState(keptSize);
  const outside = outline.crew.filter(({ station }) => station === "outside");
  const { id, revision, title } = outline.procedure;
  const choose = (next: CardSize) => {
    chosenSize.choose(next);
    setSize(next);
  };
  const foot = words("cards/foot", {
    id,
    revision: revision ? words("print/revision", { revision }) : words("print/no-revision"),
    at: printedAt,
  });
  return (
    <main className="print-sheet cards">
      <header className="cards-tools">
        <h1>{words("cards/title", { title })}</h1>
        <p>{words("cards/what")}</p>
        <SizeFields size={size} onSize={choose} />
        <button type="button" className="main-button" onClick={() => window.print()}>
          {words("print/print")}
        </button>
      </header>
      {outside.length === 0 && <p role="status">{words("cards/nobody")}</p>}
      {course === null && <p role="status">{words("cards/no-plan")}</p>}
      {outside.map((member) => (
        <CrewMemberCards
          key={member.id}
          outline={outline}
          course={course}
          member={member}
          size={size}
          foot={foot}
        />
      ))}
    </main>
  );
}

type SizeName = keyof typeof CARD_SIZES | "own";

function SizeFields({
  size,
  onSize,
}: {
  readonly size: CardSize;
  readonly onSize: (size: CardSize) => void;
}) {
  const names: readonly SizeName[] = ["large", "medium", "small", "own"];
  const isOf = ({ width, height }: CardSize) => width === size.width && height === size.height;
  const name = names.find((one) => one !== "own" && isOf(CARD_SIZES[one])) ?? "own";
  return (
    <div className="cards-size">
      <SelectField
        label={words("cards/size")}
        choices={names.map((one) => ({ id: one, name: words(`cards/size-${one}`) }))}
        value={name}
        onValue={(next) => {
          if (next !== "own") onSize(CARD_SIZES[next]);
          // A size of one's own begins a millimetre off the one that is named.
          else if (name !== "own") onSize({ ...size, height: size.height - 1 });
        }}
      />
      {(["width", "height"] as const).map((side) => (
        <label key={`${side} ${size[side]}`} className="field">
          {words(`cards/${side}`)}
          <input
            type="number"
            inputMode="numeric"
            min={SMALLEST[side]}
            max={LARGEST[side]}
            defaultValue={size[side]}
            onBlur={(event) => {
              const length = lengthWithin(event.target.value, SMALLEST[side], LARGEST[side]);
              if (length !== null && length !== size[side]) onSize({ ...size, [side]: length });
              else event.target.value = String(size[side]);
            }}
          />
        </label>
      ))}
    </div>
  );
}
