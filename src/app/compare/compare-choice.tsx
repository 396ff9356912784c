import { words } from "../../words/index.ts";
import { isOutside, outsideFile } from "../outside-files/index.ts";
import { SelectField } from "../parts/index.ts";
import type { ShelfRevision } from "../shelf/index.ts";
import { revisionName } from "./revision-name.ts";

interface CompareChoiceProps {
  readonly label: string;
  readonly all: readonly ShelfRevision[];
  /** The key that is chosen; empty for none. */
  readonly value: string;
  readonly onValue: (key: string) => void;
}

/** The choice of a revision on the shelf, or of a file that was brought in. Revisions that are like the chosen one stand together. */
export function CompareChoice({ label, all, value, onValue }: CompareChoiceProps) {
  const file = isOutside(value) ? outsideFile(value) : null;
  const isKnown = value === "" || file !== null || all.some(({ key }) => key === value);
  return (
    <SelectField
      label={label}
      value={isKnown ? value : ""}
      onValue={onValue}
      choices={[
        { id: "", name: words("compare/not-chosen") },
        ...(file ? [{ id: value, name: words("compare/file", { name: file.name }) }] : []),
        ...all.map((one) => ({ id: one.key, name: revisionName(one, all) })),
      ]}
    />
  );
}
