/**
 * The longest wait for a frame, in ms. A page in the background draws no frames, and nothing may wait for one forever.
 */
const LONGEST = 120;

/** Resolves once the browser has drawn what was changed before the call. */
export function nextFrame(): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, LONGEST);
    requestAnimationFrame(() => {
      // A message posted from a frame is handled after the frame was painted.
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        clearTimeout(timer);
        port1.close();
        setTimeout(resolve);
      };
      port2.postMessage(null);
    });
  });
}
