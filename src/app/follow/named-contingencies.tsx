import type { Contingency } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import { TextInLanguage } from "../texts/index.ts";

interface NamedContingenciesProps {
  readonly contingencies: readonly Contingency[];
  /** Opens one of them beside the walk. */
  readonly onOpen: (contingency: string) => void;
}

/** Contingencies with what each is for, each one tap from its steps. Nothing is drawn without any. */
export function NamedContingencies({ contingencies, onOpen }: NamedContingenciesProps) {
  if (contingencies.length === 0) return null;
  return (
    <ul className="plain-list named-contingencies">
      {contingencies.map(({ id, title, when }) => (
        <li key={id} className="contingency">
          <button type="button" className="plain-button" onClick={() => onOpen(id)}>
            <TextInLanguage list="contingencies" id={id} field="title">
              {title}
            </TextInLanguage>{" "}
          </button>
          {when !== undefined && (
            <p className="contingency-when">{words("panel/contingency-when", { when })}</p>
          )}
        </li>
      ))}
    </ul>
  );
}
