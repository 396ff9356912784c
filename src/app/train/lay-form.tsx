import { useState } from "react";
import type { Draft } from "../../core/log/index.ts";
import type { SurprisesFile } from "../../core/training/index.ts";
import { drawnSurprises, laidDrafts } from "../../core/training/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";

interface LayFormProps {
  readonly ledger: Ledger;
  readonly file: SurprisesFile;
  readonly anySeed: number;
  readonly at: Instant;
  readonly onLay: (drafts: readonly Draft[]) => void;
}

/** Draws surprises by a seed and lays them into a rehearsal before its clock starts, without telling which. */
export function LayForm({ ledger, file, anySeed, at, onLay }: LayFormProps) {
  const [seed, setSeed] = useState(anySeed);
  const laid = ledger.surprises.length;
  if (laid > 0) return <p className="train-laid">{words("train/are-laid", { count: laid })}</p>;
  if (ledger.phase !== "prepared") return <p>{words("train/too-late-to-lay")}</p>;
  const lay = () => {
    const { walk } = ledger.opened;
    onLay(laidDrafts(drawnSurprises(file, seed), { walk, at, actor: "trainer" }));
  };
  return (
    <form
      className="train-lay"
      onSubmit={(event) => {
        event.preventDefault();
        lay();
      }}
    >
      <p>{words("train/lay-how", { count: file.surprises.length })}</p>
      <label className="field">
        <span>{words("train/seed")}</span>
        <input
          type="number"
          min={0}
          max={999_999}
          value={seed}
          onChange={({ target }) => setSeed(Math.max(0, Math.floor(target.valueAsNumber) || 0))}
        />
      </label>
      <button type="submit" className="main-button">
        {words("train/lay")}
      </button>
    </form>
  );
}
