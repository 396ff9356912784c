import { useState } from "react";
import { lightWords, readOrbit } from "../../core/light/index.ts";
import { lightFrom } from "../../core/plan/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { pickFiles } from "../../io/browser-files/index.ts";
import "./light.css";
import { chooseLight, useLightChoice } from "../session/index.ts";

/** Files that may hold an orbit. */
const ORBIT_FILES = ".json,.xml,.kvn,.omm,.tle,.txt,application/json,application/xml,text/plain";

/** Chooses where day and night come from: an orbit file, or a site on the surface. New walks of this device keep it. */
export function LightField({ at }: { readonly at: Instant }) {
  const choice = useLightChoice();
  const [problem, setProblem] = useState<string | null>(null);
  const light = choice && lightFrom(choice, at);
  const pick = async () => {
    const [file] = await pickFiles(ORBIT_FILES);
    if (!file) return;
    const read = file.text === null ? null : readOrbit(file.text);
    if (read?.elements && file.text !== null) {
      setProblem(null);
      chooseLight({ orbit: file.text });
      return;
    }
    const why = read?.problems.map(({ field, reason }) => `${field}: ${reason}`).join("; ") ?? file.problem;
    setProblem(`${file.name} is refused: ${why}.`);
  };
  return (
    <section className="light-field" aria-label="Day and night">
      <p>
        {light
          ? lightWords(light)
          : "Day and night are not known: choose an orbit file, or a site on the surface."}
      </p>
      {light?.spans === null && (
        <p>By this element set the orbit decays within a day: the times cannot be used.</p>
      )}
      <div role="status">{problem !== null && <p>{problem}</p>}</div>
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={() => void pick()}>
          Choose an orbit file
        </button>
        {choice && (
          <button type="button" className="plain-button" onClick={() => chooseLight(null)}>
            Forget it
          </button>
        )}
      </div>
      <SiteForm />
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
      <summary className="plain-button">A site on the surface</summary>
      <div className="light-site-fields">
        <label className="field">
          <span>Latitude, ° north</span>
          <input inputMode="decimal" value={latitude} onChange={(event) => setLatitude(event.target.value)} />
        </label>
        <label className="field">
          <span>Longitude, ° east</span>
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
          Use sunrise and sunset here
        </button>
      </div>
    </details>
  );
}
