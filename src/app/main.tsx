import "./no-eval.ts";
import { setupIonicReact } from "@ionic/react";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { systemClock } from "../io/clock/index.ts";
import { openLinks } from "../io/link/index.ts";
import { openStore } from "../io/store/index.ts";
import { App, startPage } from "./app.tsx";
import { Spoken, startLanguage, startUnits, startUtc } from "./language/index.ts";
import { MistakeBoundary } from "./parts/index.ts";
import { ServicesContext } from "./session/index.ts";
import { startTheme } from "./theme/index.ts";

// What takes the device a while is begun first.
const opening = openStore({ now: systemClock });
startPage(window.location.pathname);
startUtc();
await Promise.all([startLanguage(), startUnits()]);
startTheme();
setupIonicReact({
  mode: "md",
  rippleEffect: false,
  animated: false,
});

const element = document.getElementById("root");
if (!element) throw new Error("The page has no element with the id root.");
const root = createRoot(element);

const store = await opening;
const links = openLinks({ store, now: systemClock });
root.render(
  <StrictMode>
    <ServicesContext value={{ store, links, now: systemClock }}>
      <MistakeBoundary>
        <Spoken>
          <App />
        </Spoken>
      </MistakeBoundary>
    </ServicesContext>
  </StrictMode>,
);
