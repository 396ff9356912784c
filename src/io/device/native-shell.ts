/** What the native bridge puts into each page of a shell before anything of the page runs. */
interface NativeBridge {
  readonly Capacitor?: { readonly isNativePlatform?: () => boolean };
}

/** Whether the page runs in a native shell, which holds the app itself and is served by no hub. */
export function isNativeShell(page: object = globalThis): boolean {
  return (page as NativeBridge).Capacitor?.isNativePlatform?.() === true;
}
