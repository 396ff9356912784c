import { useEffect, useId, useRef, useState } from "react";
import { words } from "../../words/index.ts";

/** One of several ways in which things can be told. */
interface Choice<Id extends string> {
  readonly id: Id;
  readonly name: string;
  /** BCP 47 tag of the language of the name, where it is another than the app's. */
  readonly lang?: string;
}

interface ChoiceFieldProps<Id extends string> {
  /** Names the field among those of the shelf, so that it keeps the focus when everything is drawn anew. */
  readonly name: string;
  readonly label: string;
  readonly choices: readonly Choice<Id>[];
  /** What is in force. */
  readonly value: string;
  /** Goes over to another choice; rejects where what it takes cannot be loaded. */
  readonly onChoose: (id: Id) => Promise<void>;
}

/** The field by which everything was told anew, which gets the focus back. */
let chosenBy: string | null = null;

/** A page that is drawn anew takes no focus before its frame is there: how many pictures that may last. */
const FRAMES = 60;

/** A field for a choice after which everything is told anew. What a choice takes may be loaded when one is made. */
export function ChoiceField<Id extends string>({
  name,
  label,
  choices,
  value,
  onChoose,
}: ChoiceFieldProps<Id>) {
  const id = useId();
  const select = useRef<HTMLSelectElement>(null);
  const [wanted, setWanted] = useState<Id | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => {
    let frame = 0;
    let left = FRAMES;
    const takeFocus = () => {
      if (chosenBy !== name) return;
      select.current?.focus();
      if (document.activeElement === select.current || --left === 0) chosenBy = null;
      else frame = requestAnimationFrame(takeFocus);
    };
    takeFocus();
    return () => cancelAnimationFrame(frame);
  }, [name]);
  const choose = (chosen: Id) => {
    setWanted(chosen);
    setFailed(null);
    chosenBy = name;
    onChoose(chosen).catch(() => {
      chosenBy = null;
      setWanted(null);
      setFailed(choices.find((one) => one.id === chosen)?.name ?? chosen);
    });
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        ref={select}
        value={wanted ?? value}
        onChange={(event) => choose(event.target.value as Id)}
      >
        {choices.map((one) => (
          <option key={one.id} value={one.id} lang={one.lang}>
            {one.name}
          </option>
        ))}
      </select>
      {failed !== null && <span role="status">{words("parts/choice-failed", { choice: failed })}</span>}
    </div>
  );
}
