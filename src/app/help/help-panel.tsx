import type { ComponentType } from "react";
import { useEffect, useState } from "react";
import { words } from "../../words/index.ts";
import { wholeLanguage } from "../language/index.ts";
import type { HelpPageProps } from "./help-page.tsx";
import "./help.css";

/** The page of help with all the words. Rejects when they are not on this device and there is no network. */
async function loadPage(): Promise<ComponentType<HelpPageProps>> {
  const [{ HelpPage }] = await Promise.all([import("./help-page.tsx"), wholeLanguage()]);
  return HelpPage;
}

/**
 * The help of a screen in a panel, loaded when it is asked for ([HLP1]). When it cannot be loaded it says so in its
 * place, and the screen behind it goes on: help must never cost the screen that it explains.
 */
export function HelpPanel({ screen, onClose }: HelpPageProps) {
  const [page, setPage] = useState<{ readonly Page: ComponentType<HelpPageProps> } | "missing" | null>(null);
  useEffect(() => {
    let isOpen = true;
    loadPage().then(
      (Page) => isOpen && setPage({ Page }),
      () => isOpen && setPage("missing"),
    );
    return () => {
      isOpen = false;
    };
  }, []);
  if (page === null) return null;
  if (page === "missing")
    return (
      <p className="help-missing" role="alert">
        {words("parts/help-not-there")}
      </p>
    );
  return <page.Page screen={screen} onClose={onClose} />;
}
