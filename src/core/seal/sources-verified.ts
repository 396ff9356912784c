import type { HubWord } from "./hub-word.ts";
import type { SourceChain } from "./source-chain.ts";
import { admissionOf } from "./source-keys.ts";
import type { LinkedEntry } from "./tally.ts";
import type { SealFinding, SourceVerified, Verdict } from "./verification.ts";
import { VERDICT_OF, worseOf } from "./verification.ts";

/** What the sources of a log are judged by. */
interface Judgement {
  readonly chains: ReadonlyMap<string, SourceChain>;
  readonly word: HubWord;
  readonly findings: readonly SealFinding[];
  /** Whether an entry stands behind every trusted checkpoint. */
  readonly isBehind: (one: LinkedEntry) => boolean;
  /** The best that can be said of a source, given how many of its entries stand behind. */
  readonly best: (behind: number) => Verdict;
}

/** Each of these sources by name, with the worst that holds of it. */
export function sourcesVerified(
  names: readonly string[],
  { chains, word, findings, isBehind, best }: Judgement,
): readonly SourceVerified[] {
  return [...new Set(names)].sort().map((source): SourceVerified => {
    const chain = chains.get(source);
    const own = chain?.entries ?? [];
    const behind = own.filter(isBehind).length;
    const said = admissionOf(source, word);
    return {
      source,
      by: said ? { name: said.name, role: said.role } : null,
      named: word.named.get(source) ?? null,
      key: chain?.key ?? null,
      verdict: findings
        .filter((one) => one.source === source)
        .reduce<Verdict>((worst, { kind }) => worseOf(worst, VERDICT_OF[kind]), best(behind)),
      entries: own.length,
      sealed: own.filter(({ isSealed }) => isSealed).length,
      first: own[0]?.number ?? null,
      last: own.at(-1)?.number ?? null,
      behind,
    };
  });
}

/** The worst verdict of these sources. */
export const worstOf = (sources: readonly SourceVerified[]): Verdict =>
  sources.reduce<Verdict>((worst, one) => worseOf(worst, one.verdict), "whole");
