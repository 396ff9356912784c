import { useState } from "react";
import { lightMessage, readOrbit } from "../../core/light/index.ts";
import { lightFrom } from "../../core/plan/index.ts";
import type { Procedure } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { contactMessage } from "../../core/window/index.ts";
import { pickFiles } from "../../io/browser-files/index.ts";
import { inWords, words } from "../../words/index.ts";
import "./light.css";
import { chooseLight } from "../session/index.ts";
import { ContactSites } from "./contact-sites.tsx";
import type { ProcedureLight } from "./use-procedure-light.ts";

/** The types of file that may hold an orbit. */
const ORBIT_FILES = ".json,.xml,.kvn,.omm,.tle,.txt,application/json,application/xml,text/plain";

/**
 * A field for choosing the source of day and night: an orbit file, or a site on the surface. The choice is kept for
 * later walks of this device. It says whether the source in use comes with the procedure, and goes back to that one.
 */
export function LightField({
  procedure,
  at,
  source,
}: {
  readonly procedure: Procedure;
  readonly at: Instant;
  readonly source: ProcedureLight;
}) {
  const { choice, sites, isBundled, takeBundled, takeOff } = source;
  const [problem, setProblem] = useState<string | null>(null);
  const light = choice && lightFrom(choice, at);
  const hasOrbit = choice !== null && "orbit" in choice;
  const contact = light && contactMessage(procedure, light);
  const pick = async () => {
    const [file] = await pickFiles(ORBIT_FILES);
    if (!file) return;
    const read = file.text === null ? null : readOrbit(file.text);
    if (read?.elements && file.text !== null) {
      setProblem(null);
      chooseLight({ orbit: file.text });
      return;
    }
    const why =
      read?.problems
        .map(({ field, reason: why }) => words("orbit/problem", { field, why }))
        .join(words("figures/between-clauses")) ?? file.problem;
    setProblem(words("light/refused", { file: file.name, why: why ?? "" }));
  };
  return (
    <section className="light-field" aria-label={words("light/day-and-night")}>
      <p>{light ? inWords(lightMessage(light)) : words("light/not-known")}</p>
      {contact && <p>{inWords(contact)}</p>}
      {isBundled && <p>{words("light/comes-along")}</p>}
      {light?.spans === null && <p>{words("light/decays")}</p>}
      <div role="status">{problem !== null && <p>{problem}</p>}</div>
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={() => void pick()}>
          {words("light/choose-orbit")}
        </button>
        {takeOff && (
          <button type="button" className="plain-button" onClick={takeOff}>
            {words(isBundled ? "light/take-off" : "light/forget")}
          </button>
        )}
        {takeBundled && (
          <button type="button" className="plain-button" onClick={takeBundled}>
            {words("light/take-along")}
          </button>
        )}
      </div>
      <SiteForm />
      {hasOrbit && <ContactSites sites={sites} />}
    </section>
  );
}

function SiteForm() {
  const [latitude, setLatitude] = useState("");
  const [longitude, setLongitude] = useState("");
  const [lat, lon] = [Number(latitude), Number(longitude)];
  const isSite =
    latitude.trim() !== "" && longitude.trim() !== "" && Math.abs(lat) <= 90 && Math.abs(lon) <= 360;
  return (
    <details className="light-site">
      <summary className="plain-button">{words("light/site")}</summary>
      <div className="light-site-fields">
        <label className="field">
          <span>{words("light/latitude")}</span>
          <input inputMode="decimal" value={latitude} onChange={(event) => setLatitude(event.target.value)} />
        </label>
        <label className="field">
          <span>{words("light/longitude")}</span>
          <input
            inputMode="decimal"
            value={longitude}
            onChange={(event) => setLongitude(event.target.value)}
          />
        </label>
        <button
          type="button"
          className="plain-button"
          disabled={!isSite}
          onClick={() => chooseLight({ site: { latitude: lat, longitude: lon, height: 0 } })}
        >
          {words("light/use-site")}
        </button>
      </div>
    </details>
  );
}
