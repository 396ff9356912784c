import { useMemo, useState } from "react";
import type { Draft } from "../../core/log/index.ts";
import type { Procedure } from "../../core/procedure/index.ts";
import { readSurprises } from "../../core/training/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Folded, Ledger } from "../../core/walk/index.ts";
import type { GivenFile } from "../../io/browser-files/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import { FireList } from "./fire-list.tsx";
import { FollowersSight } from "./followers-sight.tsx";
import { LayForm } from "./lay-form.tsx";
import { TrainerHere } from "./trainer-here.tsx";
import "./train.css";

interface TrainViewProps {
  readonly folded: Folded;
  readonly ledger: Ledger;
  /** The instant up to which the walk is shown: that of its last entry. */
  readonly at: Instant;
  /** The present time of the rehearsal, at which what is fired comes. */
  readonly clock: () => Instant;
  /**
   * What this device may do: the tablet of a trainer fires, and so does the one that plays the crew; whoever leads a rehearsal lays
   * surprises before the clock starts.
   */
  readonly may: { readonly fire: boolean; readonly lay: boolean };
  /** True when the rehearsal is followed on this device too, so that its surprises are shown only when asked for. */
  readonly isFollowedHere: boolean;
  /** The text of the file of surprises; `null` while there is none. */
  readonly text: string | null;
  /** Lets the trainer choose a file; resolves with what was chosen. */
  readonly pick: () => Promise<readonly GivenFile[]>;
  readonly onText: (text: string) => void;
  /** Enters what was laid or fired; resolves with why it had no effect, `null` when it had. */
  readonly onEnter: (drafts: readonly Draft[]) => Promise<Message | null>;
  /** A seed that nobody chose. */
  readonly anySeed: number;
}

/** The trainer's screen: the surprises of a rehearsal, fired by hand or laid by a seed, beside what the followers see. */
export function TrainView(props: TrainViewProps) {
  const { folded, ledger, at, may, text, onEnter } = props;
  const { procedure } = ledger.inForce.outline;
  const [said, setSaid] = useState<string | null>(null);
  const [isAskedFor, setAskedFor] = useState(false);
  const read = useMemo(() => (text === null ? null : readSurprises(text, procedure)), [text, procedure]);
  const enter = async (drafts: readonly Draft[], done: string) => {
    try {
      const why = await onEnter(drafts);
      setSaid(why === null ? done : words("train/no-effect", { why }));
    } catch (error) {
      setSaid(words("train/not-entered", { why: errorWords(error) }));
    }
  };
  if (ledger.opened.mode !== "rehearsal")
    return <p className="page-message">{words("train/no-rehearsal")}</p>;
  if (!may.fire && !may.lay) {
    return (
      <p className="page-message">
        {words(ledger.closed ? "train/told-in-review" : "train/not-for-followers")}
      </p>
    );
  }
  const isTrainer = may.fire && (!props.isFollowedHere || isAskedFor);
  return (
    <div className="train">
      <section className="train-surprises" aria-labelledby="train-surprises">
        <h2 id="train-surprises">{read?.surprises?.title ?? words("train/title")}</h2>
        {read?.surprises?.summary !== undefined && <p>{read.surprises.summary}</p>}
        <ChooseFile
          procedure={procedure}
          isThere={text !== null}
          pick={props.pick}
          onText={props.onText}
          onSaid={setSaid}
        />
        <p role="status" className="train-said">
          {said}
        </p>
        {read && read.findings.length > 0 && (
          <ul className="plain-list" aria-label={words("train/findings")}>
            {read.findings.map((one) => (
              <li key={`${one.code} ${one.pointer}`}>
                {one.position
                  ? words("train/finding-at", { line: one.position.line, finding: one.message })
                  : inWords(one.message)}
              </li>
            ))}
          </ul>
        )}
        {read?.surprises && may.lay && (
          <LayForm
            ledger={ledger}
            file={read.surprises}
            anySeed={props.anySeed}
            at={at}
            onLay={(drafts) => enter(drafts, words("train/laid", { count: drafts.length }))}
          />
        )}
        {read?.surprises && may.fire && props.isFollowedHere && (
          <TrainerHere isAskedFor={isAskedFor} onAskedFor={setAskedFor} isClosed={ledger.closed !== null} />
        )}
        {read?.surprises && isTrainer && (
          <FireList
            folded={folded}
            ledger={ledger}
            at={at}
            clock={props.clock}
            surprises={read.surprises.surprises}
            onFire={(draft, title) => enter([draft], words("train/fired", { title }))}
          />
        )}
      </section>
      {isTrainer && <FollowersSight ledger={ledger} at={at} />}
    </div>
  );
}

interface ChooseFileProps {
  readonly procedure: Procedure;
  readonly isThere: boolean;
  readonly pick: () => Promise<readonly GivenFile[]>;
  readonly onText: (text: string) => void;
  readonly onSaid: (said: string | null) => void;
}

/** Takes a file of surprises; says what keeps one from being taken. */
function ChooseFile({ procedure, isThere, pick, onText, onSaid }: ChooseFileProps) {
  const choose = async () => {
    const [file] = await pick();
    if (!file) return;
    onSaid(file.text === null ? inWords(file.problem) : null);
    if (file.text !== null) onText(file.text);
  };
  return (
    <div className="panel-acts">
      {!isThere && <p className="hint">{words("train/none", { title: procedure.title })}</p>}
      <button type="button" className="plain-button" onClick={() => void choose()}>
        {words("train/choose-file")}
      </button>
    </div>
  );
}
