import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { FileStep } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";

interface JointFormProps {
  readonly file: ProcedureFile;
  readonly step: FileStep;
  readonly onTurn: (crew: string) => void;
  readonly onEnd: () => void;
}

/** Who does a step together ([WRT3]): the strands at its row are tapped meanwhile, or the call signs here. */
export function JointForm({ file, step, onTurn, onEnd }: JointFormProps) {
  return (
    <section className="write-form" aria-labelledby="write-joint">
      <h2 id="write-joint">{words("write/joint")}</h2>
      <p role="status">{words("write/joint-how", { action: step.do })}</p>
      <div className="panel-acts write-joint">
        {file.crew.map(({ id, call }) => (
          <button
            key={id}
            type="button"
            className="plain-button"
            aria-pressed={step.by.includes(id)}
            onClick={() => onTurn(id)}
          >
            {call}
          </button>
        ))}
        <button type="button" className="main-button" onClick={onEnd}>
          {words("write/joint-end")}
        </button>
      </div>
    </section>
  );
}
