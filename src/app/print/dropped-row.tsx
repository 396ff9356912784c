import { words } from "../../words/index.ts";

interface DroppedRowProps {
  /** The call signs of who was to do it. */
  readonly calls: readonly string[];
  readonly action: string;
}

/** A step that was taken out since another revision, struck through where it stood ([WRT8]). It has no box to tick. */
export function DroppedRow({ calls, action }: DroppedRowProps) {
  return (
    <tr className="print-step print-dropped" data-changed>
      <th scope="row">–</th>
      <td>{words("figures/list", { items: calls })}</td>
      <td className="print-action" colSpan={4}>
        <p className="print-changed">{words("amending/how-dropped")}</p>
        <p className="print-do">
          <del>{action}</del>
        </p>
      </td>
    </tr>
  );
}
