import { useState } from "react";
import type { Site } from "../../core/light/index.ts";
import { parseSite } from "../../core/light/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { chooseSites } from "../session/index.ts";

/**
 * The ground sites whose contact is worked out from the orbit ([LGT3]): those in use, each to be taken off, and fields
 * for another one. They are kept on the device.
 */
export function ContactSites({ sites }: { readonly sites: readonly Site[] }) {
  const [fields, setFields] = useState(["", "", "0", "5"]);
  const site = fields.every((text) => text.trim() !== "") ? parseSite(fields.join(",")) : null;
  const labels = ["light/latitude", "light/longitude", "light/height", "light/mask"] as const;
  return (
    <details className="light-site">
      <summary className="plain-button">{words("light/contact-sites")}</summary>
      <ul className="plain-list">
        {sites.map((one) => (
          <li key={JSON.stringify(one)}>
            {inWords(message("light/contact-site", { ...one }))}{" "}
            <button
              type="button"
              className="plain-button"
              onClick={() => chooseSites(sites.filter((other) => other !== one))}
            >
              {words("light/site-off")}
            </button>
          </li>
        ))}
      </ul>
      <div className="light-site-fields">
        {labels.map((label, index) => (
          <label key={label} className="field">
            <span>{words(label)}</span>
            <input
              inputMode="decimal"
              value={fields[index] ?? ""}
              onChange={(event) => setFields(fields.with(index, event.target.value))}
            />
          </label>
        ))}
        <button
          type="button"
          className="plain-button"
          disabled={site === null}
          onClick={() => site && chooseSites([...sites, site])}
        >
          {words("light/add-site")}
        </button>
      </div>
    </details>
  );
}
