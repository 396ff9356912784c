import { IonToggle } from "@ionic/react";
import { render, screen } from "@testing-library/react";
import { expect, it, vi } from "vitest";

it("lets Ionic's components keep their handlers and properties under jsdom", () => {
  const changed = vi.fn();
  render(
    <IonToggle data-testid="toggle" checked={true} onIonChange={changed}>
      Keep the screen awake
    </IonToggle>,
  );
  const toggle = screen.getByTestId<HTMLIonToggleElement>("toggle");
  expect(toggle.checked).toBe(true);
  toggle.dispatchEvent(new CustomEvent("ionChange", { detail: { checked: false } }));
  expect(changed).toHaveBeenCalledOnce();
});
