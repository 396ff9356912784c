import { url as regular } from "virtual:japanese-face/400";
import { url as bold } from "virtual:japanese-face/700";

/** Noto Sans JP: of its characters those of the app's own words. An author's further ones are drawn by the device's face. */
export const faces = { regular, bold };
