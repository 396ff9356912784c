import type { InstantSpan, Light, Site } from "../core/light/index.ts";
import { contactSpansOf, lightFor, lightMessage, mergedSpans, orbitOf } from "../core/light/index.ts";
import type { Duration, Instant } from "../core/units/index.ts";
import { formatInstant } from "../core/units/index.ts";
import { inWords, words } from "../words/index.ts";
import { documentText } from "./document-text.ts";
import { orbitFile } from "./orbit-file.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The options of `passes`. */
export interface PassesArguments {
  readonly from: Instant;
  readonly hours: number;
  readonly site: readonly Site[];
  readonly json?: boolean;
}

interface NamedSpan extends InstantSpan {
  readonly kind: "daylight" | "penumbra" | "darkness" | "contact";
}

const HOUR = 3_600_000;

/** `passes`: day, penumbra and night of an orbit, and contact with sites, in the order of their starts. */
export async function passesCommand(
  file: string,
  { from, hours, site, json = false }: PassesArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const elements = await orbitFile(file);
  const light = lightFor({ kind: "orbit", elements }, from, (hours * HOUR) as Duration);
  const { spans } = light;
  if (!spans) throw new UnusableInputError(words("cli/orbit-decays", { file }));
  const orbit = orbitOf(elements);
  const contact = mergedSpans(site.flatMap((one) => contactSpansOf(orbit, one, light.from, light.to) ?? []));
  const named = (kind: NamedSpan["kind"], all: readonly InstantSpan[]): NamedSpan[] =>
    all.map((span) => ({ kind, ...span }));
  const all = [
    ...named("daylight", spans.daylight),
    ...named("penumbra", spans.penumbra),
    ...named("darkness", spans.darkness),
    ...named("contact", contact),
  ].sort((a, b) => a.start - b.start || a.end - b.end);
  terminal.out(json ? documentText(() => ({ spans: all.map(inJson) })) : inTable(light, all));
  if (light.isOld) terminal.err(`${words("cli/of-light", { file, what: inWords(lightMessage(light)) })}\n`);
  return EXIT.fine;
}

const inJson = ({ kind, start, end }: NamedSpan) => ({
  kind,
  start: formatInstant(start),
  end: formatInstant(end),
});

function inTable(light: Light, spans: readonly NamedSpan[]): string {
  const table = textTable(
    [
      { heading: words("cli/spans-from") },
      { heading: words("cli/spans-to") },
      { heading: words("cli/spans-last"), figures: true },
      { heading: words("cli/spans-what") },
    ],
    spans.map(({ kind, start, end }) => [
      words("cli/spans-at", { at: start }),
      words("cli/spans-at", { at: end }),
      words("figures/length", { time: (end - start) as Duration }),
      words(`cli/spans-${kind}`),
    ]),
  );
  return `${inWords(lightMessage(light))}\n\n${table}\n${words("cli/caution")}\n`;
}
