import type { Procedure } from "./schema.ts";

/** A picture as a `data:` URL (RFC 2397). It is only ever shown as an image, so that nothing in it runs ([MAP3]). */
export const pictureSource = ({ type, data }: Procedure["pictures"][number]): string =>
  `data:${type};base64,${data}`;
