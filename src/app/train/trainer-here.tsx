import { words } from "../../words/index.ts";

interface TrainerHereProps {
  readonly isAskedFor: boolean;
  readonly onAskedFor: (isAskedFor: boolean) => void;
  readonly isClosed: boolean;
}

/** Says what of the surprises this device keeps back until the closing, and shows them to whoever says to be the trainer ([TRN2]). */
export function TrainerHere({ isAskedFor, onAskedFor, isClosed }: TrainerHereProps) {
  if (isClosed) return null;
  return (
    <div className="train-here">
      <p>{words("train/kept-back")}</p>
      <button
        type="button"
        className="plain-button"
        aria-pressed={isAskedFor}
        onClick={() => onAskedFor(!isAskedFor)}
      >
        {words(isAskedFor ? "train/hide-them" : "train/show-them")}
      </button>
    </div>
  );
}
