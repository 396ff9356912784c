import type { Alert } from "../../core/procedure/index.ts";
import "./alert-box.css";

/** A warning, caution or note: its word, its colour and its own edge. */
export function AlertBox({ alert }: { readonly alert: Alert }) {
  return (
    <p className="alert-box" data-level={alert.level}>
      <b>{alert.level.toUpperCase()}</b>
      <span>{alert.text}</span>
    </p>
  );
}
