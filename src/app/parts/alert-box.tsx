import type { Alert } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import "./alert-box.css";

/** A warning, caution or note, distinguished by its word, its colour and its edge. */
export function AlertBox({ alert }: { readonly alert: Alert }) {
  return (
    <p className="alert-box" data-level={alert.level}>
      <b>{words(`parts/alert-${alert.level}`)}</b>
      <span>{alert.text}</span>
    </p>
  );
}
