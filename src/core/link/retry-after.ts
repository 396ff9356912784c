/** How long the header `Retry-After` has one wait, in ms; `null` without one in seconds (RFC 9110, section 10.2.3). */
export function retryAfterOf(header: string | null | undefined): number | null {
  return header && /^\d{1,6}$/.test(header) ? Number(header) * 1000 : null;
}
