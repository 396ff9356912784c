/**
 * How the tests start Chromium. As root it has no sandbox; without the rest it stalls on look-ups
 * of its maker's services on a machine that has no way out.
 */
export const chromiumArguments: readonly string[] = [
  "--no-sandbox",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
  "--disable-quic",
];
