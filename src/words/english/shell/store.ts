/** What is wrong with the storage of a device, and with a file that was given to the app. */
export const storeWords = {
  "store/missing": "This browser has no storage for apps.",
  "store/denied": "This browser does not let the app store anything; it may be a private window.",
  "store/full": "The storage of this device is full.",
  "store/blocked": "The storage of this device did not answer; another tab may be holding it.",
  "store/newer": "The storage was made by a newer version of this app; update the app.",
  "store/lost": "The storage of this app was closed or cleared by the browser.",
  "store/failed": "The storage of this device reported an error.",
  "store/in-memory":
    "{$trouble :message} The walk goes on in memory only: export it before this page is closed.",
  "given/pasted": "pasted text",
  "given/too-large": "The file is larger than {$most :number} MiB.",
  "given/unreadable": "The file cannot be read; it may be a folder, or have been moved.",
  "given/not-text": "The file is not text in UTF-8.",
} as const;
