/** How long the header `Retry-After` asks to wait, in ms; `null` when it is missing or gives no seconds (RFC 9110, section 10.2.3). */
export function retryAfterOf(header: string | null | undefined): number | null {
  return header && /^\d{1,6}$/.test(header) ? Number(header) * 1000 : null;
}
