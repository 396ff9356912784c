/** Does something at once, or once what is being pressed was let go: until then everything keeps its place under the pointer. */
export function afterPress(isPressed: boolean, act: () => void): void {
  if (!isPressed) {
    act();
    return;
  }
  const over = new AbortController();
  const onOver = () => {
    over.abort();
    setTimeout(act, 100);
  };
  for (const name of ["pointerup", "keydown"]) window.addEventListener(name, onOver, { signal: over.signal });
}
