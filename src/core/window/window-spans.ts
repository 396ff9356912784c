import type { InstantSpan, Light } from "../light/index.ts";
import type { Procedure } from "../procedure/index.ts";
import type { Duration, Instant, WindowId } from "../units/index.ts";
import { between } from "../units/index.ts";
import { contactWindowsOf } from "./contact-windows.ts";

/** A span of time in PET; both ends belong to it. */
export interface Span {
  readonly from: Duration;
  readonly to: Duration;
}

/**
 * The spans of each window in PET, in order of their start. `null` for a window whose spans are unknown; such a window
 * constrains nothing.
 */
export type WindowSpans = ReadonlyMap<WindowId, readonly Span[] | null>;

/** The last PET for which windows that depend on the start are looked at ([PLN4]). */
export const HORIZON = (24 * 3_600_000) as Duration;

/**
 * The spans of a procedure's windows in PET. Spans given as instants, and day and night, need the instant of PET 0
 * (`start`). Day and night that have no spans in the file come from `light`. A window whose spans need something that
 * is missing is unknown. Where `light` has ground sites, the windows of contact are the passes over them ([LGT3]).
 */
export function windowSpansOf(
  procedure: Procedure,
  start: Instant | null,
  light: Pick<Light, "spans" | "contact"> | null = null,
): WindowSpans {
  const contact = light?.contact ?? null;
  const isContact = new Set(contact && contactWindowsOf(procedure));
  return new Map(
    procedure.windows.map(({ id, kind, spans }) => {
      const passes = contact && isContact.has(id) ? contact.map(asUtc) : undefined;
      const given = passes ?? spans ?? (kind === "listed" ? undefined : light?.spans?.[kind].map(asUtc));
      if (!given) return [id, null];
      const inPet: Span[] = [];
      for (const span of given) {
        if (span.clock === "pet") inPet.push({ from: span.from, to: span.to });
        else if (start === null) return [id, null];
        // An instant days away is none of this walk's: with another start it would only be waited for.
        else inPet.push(...upToHorizon({ from: between(start, span.from), to: between(start, span.to) }));
      }
      return [id, inPet.sort((a, b) => a.from - b.from)];
    }),
  );
}

/** A light may reach further than one plan needs, as it does when many starts are scanned. */
const upToHorizon = ({ from, to }: Span): Span[] =>
  from >= HORIZON ? [] : [{ from, to: to > HORIZON ? HORIZON : to }];

const asUtc = ({ start, end }: InstantSpan) => ({ clock: "utc" as const, from: start, to: end });
