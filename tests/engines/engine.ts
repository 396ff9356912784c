/** A web engine that the app is tried in. */
export interface Engine {
  readonly name: "Chromium" | "WebKit" | "Firefox";
  /** Why it cannot be had on this machine, for the title of what is skipped; `null` when it can. */
  readonly missing: string | null;
  /** Whether its driver can print; that of WebKit cannot. */
  readonly prints: boolean;
  /** Starts a browser with a store of its own and one window of a tablet's size. */
  open(): Promise<EngineBrowser>;
}

/** A browser and its one page. */
export interface EngineBrowser {
  goto(address: string): Promise<void>;
  reload(): Promise<void>;
  /** What an expression of the page comes to; it has to be data, or a promise of data. */
  run<T>(expression: string): Promise<T>;
  /** Taps the element that an expression of the page comes to, as a hand would: at its middle, where it is seen. */
  tap(element: string): Promise<void>;
  /** Writes into the field that an expression of the page comes to, by the keyboard; a new line is the key Enter. */
  write(element: string, text: string): Promise<void>;
  /** What is on the screen, as PNG. */
  screenshot(): Promise<Buffer>;
  /** The page as it comes on paper, as PDF. */
  paper(): Promise<Buffer>;
  close(): Promise<void>;
}

/** The size of the page in CSS px: a tablet that lies. */
export const WIDTH = 1180;
export const HEIGHT = 820;
