import { useEffect, useMemo, useRef, useState } from "react";
import type { Entry, FactName } from "../../core/log/index.ts";
import { kindOf } from "../../core/seal/index.ts";
import { factMessage } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import type { AskSeal, ReadLog } from "./ask-seal-worker.ts";
import type { ExtractTold } from "./seal-request.ts";

/** A task whose entries may be chosen, with its steps. */
export interface ExtractTask {
  readonly id: string;
  readonly title: string;
  readonly steps: readonly string[];
}

interface ExtractFormProps {
  readonly entries: readonly Entry[];
  readonly readLog: ReadLog;
  readonly tasks: readonly ExtractTask[];
  readonly onSave: (text: string) => void;
  readonly ask: AskSeal;
}

type Making = ExtractTold | { readonly kind: "idle" | "working" | "failed" };

const ALL = "";

/** Chooses which entries an extract has in full, by kind and task, and makes it. */
export function ExtractForm({ entries, readLog, tasks, onSave, ask }: ExtractFormProps) {
  const [kinds, setKinds] = useState<ReadonlySet<string>>(new Set());
  const [task, setTask] = useState(ALL);
  const [making, setMaking] = useState<Making>({ kind: "idle" });
  const end = useRef<(() => void) | null>(null);
  useEffect(() => () => end.current?.(), []);
  const { length } = entries;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list of a walk's entries grows in place.
  const choices = useMemo(() => kindsOf(entries), [entries, length]);
  const make = () => {
    end.current?.();
    setMaking({ kind: "working" });
    const steps = tasks.find(({ id }) => id === task)?.steps ?? [];
    end.current = ask({ kind: "extract", choice: { kinds: [...kinds], steps } }, readLog, {
      onTold: (told) => {
        if (told.kind !== "extract") return;
        setMaking(told.made);
        if (told.made.kind === "made") onSave(told.made.text);
      },
      onFail: () => setMaking({ kind: "failed" }),
    });
  };
  return (
    <details className="seal-extract">
      <summary>{words("seal/extract-title")}</summary>
      <p className="hint">{words("seal/extract-how")}</p>
      <fieldset className="choices">
        <legend>{words("seal/extract-kinds")}</legend>
        {choices.map(({ kind, name, count }) => (
          <label key={kind} className="choice">
            <input
              type="checkbox"
              checked={kinds.has(kind)}
              onChange={({ target }) => {
                const others = [...kinds].filter((one) => one !== kind);
                setKinds(new Set(target.checked ? [...others, kind] : others));
                setMaking({ kind: "idle" });
              }}
            />
            <span>{words("seal/extract-kind", { kind: factMessage(name), count })}</span>
          </label>
        ))}
      </fieldset>
      <SelectField
        label={words("seal/extract-task")}
        choices={[
          { id: ALL, name: words("seal/extract-all-tasks") },
          ...tasks.map(({ id, title }) => ({ id, name: title })),
        ]}
        value={task}
        onValue={(id) => {
          setTask(id);
          setMaking({ kind: "idle" });
        }}
      />
      <button
        type="button"
        className="plain-button"
        disabled={kinds.size === 0 || making.kind === "working"}
        onClick={make}
      >
        {words("seal/extract-make")}
      </button>
      <p role="status">{makingWords(making)}</p>
    </details>
  );
}

/** The kinds of the entries that are there and are known here, with how many of each. */
function kindsOf(entries: readonly Entry[]): readonly { kind: string; name: FactName; count: number }[] {
  const kinds = new Map<string, { kind: string; name: FactName; count: number }>();
  for (const entry of entries) {
    const { fact } = entry.read;
    if (!fact) continue;
    const kind = kindOf(entry);
    const count = (kinds.get(kind)?.count ?? 0) + 1;
    kinds.set(kind, { kind, name: fact.name, count });
  }
  return [...kinds.values()].sort((a, b) => b.count - a.count);
}

function makingWords(making: Making): string {
  switch (making.kind) {
    case "idle":
      return "";
    case "made":
      return words("seal/extract-made", { chosen: making.chosen, left: making.leftOut });
    case "behind":
      return words("seal/extract-behind", { count: making.count });
    default:
      return words(`seal/extract-${making.kind}`);
  }
}
