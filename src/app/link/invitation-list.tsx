import { useCallback, useEffect, useState } from "react";
import type { OpenInvitation } from "../../core/link/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { between } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import { useServices } from "../session/index.ts";

interface InvitationListProps {
  readonly walk: WalkId;
  readonly now: Instant;
  /** How many codes were made here; the hub is asked again when one is. */
  readonly made: number;
}

/** The codes of a walk by which tablets can still join, without the codes themselves, each to be ended. */
export function InvitationList({ walk, now, made }: InvitationListProps) {
  const { links } = useServices();
  const [open, setOpen] = useState<readonly OpenInvitation[]>([]);
  const [problem, setProblem] = useState<string | null>(null);
  const ask = useCallback(
    async (before: () => Promise<void>) => {
      try {
        await before();
        setOpen(await links.invitations(walk));
        setProblem(null);
      } catch (error) {
        setProblem(words("link/codes-not-told", { why: errorWords(error) }));
      }
    },
    [links, walk],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: a code that was made is one more to list.
  useEffect(() => void ask(async () => {}), [ask, made]);
  const good = open.filter(({ left, expires }) => left > 0 && between(now, expires) > 0);
  if (good.length === 0 && problem === null) return null;
  return (
    <section aria-labelledby="open-codes">
      <h3 id="open-codes">{words("link/open-codes")}</h3>
      <ul className="plain-list">
        {good.map(({ name, role, left, expires }) => (
          <li key={name}>
            {words("link/open-code", {
              role: words(`parts/role-${role}`),
              count: left,
              left: between(now, expires),
            })}{" "}
            <button
              type="button"
              className="plain-button"
              onClick={() => void ask(() => links.endInvitation(walk, name))}
            >
              {words("link/end-code")}
            </button>
          </li>
        ))}
      </ul>
      {problem !== null && (
        <p className="link-problem" role="alert">
          {problem}
        </p>
      )}
    </section>
  );
}
