import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { once } from "../core/units/index.ts";
import { App, startPage } from "./app.tsx";
import { Spoken, startLanguage, startUnits, startUtc } from "./language/index.ts";
import { MistakeBoundary } from "./parts/index.ts";
import { startTheme } from "./theme/index.ts";

/** Opens the store and the links, once: what uses them first begins it. */
const services = once(async () => (await import("./open-services.ts")).openServices());

/** Draws the app once the language and the units of the reader are there. */
async function start(): Promise<void> {
  startPage(window.location.pathname, services);
  startUtc();
  await Promise.all([startLanguage(), startUnits()]);
  startTheme();
  const element = document.getElementById("root");
  if (!element) throw new Error("The page has no element with the id root.");
  createRoot(element).render(
    <StrictMode>
      <MistakeBoundary>
        <Spoken>
          <App services={services} />
        </Spoken>
      </MistakeBoundary>
    </StrictMode>,
  );
}

// Nothing is awaited while this part is still being run: what the language comes with imports from it, and would wait for it in turn.
void start();
