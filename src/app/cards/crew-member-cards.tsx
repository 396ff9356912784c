import { useMemo, useRef, useState } from "react";
import type { Course } from "../../core/course/index.ts";
import type { CrewMember, Outline } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { StrandMarks } from "../print/index.ts";
import { CardRowView } from "./card-row.tsx";
import type { CardGroup } from "./card-rows.ts";
import { cardGroups } from "./card-rows.ts";
import type { CardSize } from "./card-size.ts";
import { cardsOnSheet, pitchOf } from "./card-size.ts";
import { CutMarks } from "./cut-marks.tsx";
import type { CardPart } from "./dealt-cards.ts";
import { MOST_LETTERS, useDealtCards } from "./use-dealt-cards.ts";

/** Millimetres of a card that are not text: its head, its foot, and what is free around them. */
const AROUND = { across: 6, down: 16 } as const;

interface CrewMemberCardsProps {
  readonly outline: Outline;
  /** The plan whose times stand beside the steps; `null` without one. */
  readonly course: Course | null;
  readonly member: CrewMember;
  readonly size: CardSize;
  /** What each card says of the procedure it was printed from. */
  readonly foot: string;
}

/** The sheets with the cards of one crew member. */
export function CrewMemberCards({ outline, course, member, size, foot }: CrewMemberCardsProps) {
  const [letters, setLetters] = useState(MOST_LETTERS);
  const groups = useMemo(
    () => cardGroups(outline, course, member.id, letters),
    [outline, course, member, letters],
  );
  const drawn = useRef<HTMLDivElement>(null);
  const of = useMemo(() => ({ groups, size }), [groups, size]);
  const room = size.height - AROUND.down;
  const cards = useDealtCards(drawn, of, { room, letters, onTooLong: setLetters });
  const { across, down } = cardsOnSheet(size);
  const sheets = cards ? inSheets(cards, across * down) : [];
  return (
    <>
      <div
        className="cards-drawn"
        ref={drawn}
        aria-hidden="true"
        style={{ width: `${size.width - AROUND.across}mm` }}
      >
        <p className="card-mark">{words("cards/goes-on", { step: "0.0", card: 0 })}</p>
        {groups.map((group) => (
          <div className="card-group" key={group.number}>
            {group.rows.map((row, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows have no name but their place in the step.
              <CardRowView key={index} row={row} />
            ))}
          </div>
        ))}
      </div>
      {sheets.map((sheet, index) => (
        <section
          // biome-ignore lint/suspicious/noArrayIndexKey: sheets have no name but their number.
          key={index}
          className="card-sheet"
          aria-label={words("cards/sheet", { crew: member.call, sheet: index + 1, of: sheets.length })}
        >
          <CutMarks size={size} across={across} down={down} />
          {sheet.map(({ parts, number }, place) => (
            <article
              key={number}
              className="card"
              aria-label={words("cards/card", { crew: member.call, number, of: cards?.length ?? 0 })}
              style={{
                width: `${size.width}mm`,
                height: `${size.height}mm`,
                left: `${4 + (place % across) * pitchOf(size.width)}mm`,
                top: `${4 + Math.floor(place / across) * pitchOf(size.height)}mm`,
              }}
            >
              <header className="card-top">
                <StrandMarks outline={outline} by={[member.id]} />
                <span>{words("cards/number", { number, of: cards?.length ?? 0 })}</span>
              </header>
              <div className="card-body">
                {parts.map((part) => (
                  <PartOfStep key={part.group} part={part} group={groups[part.group]} number={number} />
                ))}
              </div>
              <p className="card-foot">{foot}</p>
            </article>
          ))}
        </section>
      ))}
    </>
  );
}

interface PartOfStepProps {
  readonly part: CardPart;
  readonly group: CardGroup | undefined;
  /** The number of the card. */
  readonly number: number;
}

function PartOfStep({ part, group, number }: PartOfStepProps) {
  if (!group) return null;
  return (
    <>
      {part.isContinued && (
        <p className="card-mark">{words("cards/continued", { step: group.number, card: number - 1 })}</p>
      )}
      {group.rows.slice(part.from, part.to).map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows have no name but their place in the step.
        <CardRowView key={index} row={row} />
      ))}
      {part.goesOn && (
        <p className="card-mark">{words("cards/goes-on", { step: group.number, card: number + 1 })}</p>
      )}
    </>
  );
}

interface NumberedCard {
  readonly parts: readonly CardPart[];
  /** Counted from 1 over all cards of the crew member. */
  readonly number: number;
}

function inSheets(
  cards: readonly (readonly CardPart[])[],
  most: number,
): readonly (readonly NumberedCard[])[] {
  const sheets: NumberedCard[][] = [];
  for (const [index, parts] of cards.entries()) {
    if (index % most === 0) sheets.push([]);
    sheets.at(-1)?.push({ parts, number: index + 1 });
  }
  return sheets;
}
