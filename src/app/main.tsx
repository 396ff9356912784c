import { setupIonicReact } from "@ionic/react";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { startTheme } from "./theme/index.ts";

startTheme();
setupIonicReact({
  mode: "md",
  rippleEffect: false,
  animated: !window.matchMedia("(prefers-reduced-motion: reduce)").matches,
});

const root = document.getElementById("root");
if (!root) throw new Error("The page has no element with the id root.");
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
