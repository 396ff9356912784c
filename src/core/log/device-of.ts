/** The device that a source belongs to: `/devices/x` of `/devices/x` and of what it has below; other sources are their own. */
export function deviceOf(source: string): string {
  return /^\/devices\/[^/]+/.exec(source)?.[0] ?? source;
}
