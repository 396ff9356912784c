import type { PlatformFits } from "../../core/seal/index.ts";

/** One look at a signature: the signature, what was signed, and the key. */
export type FitsAsked = Parameters<PlatformFits>;

/** Somebody beside this thread who looks at signatures. */
export interface FitsHelper {
  /** Whether each fits, in their order. Rejects when the helper is gone. */
  look(asked: readonly FitsAsked[]): Promise<readonly boolean[]>;
}

/** How many looks are handed over at once. */
const AT_ONCE = 256;

/** With fewer looks than this nobody is called for help: to start a worker takes as long. */
const WORTH_HELP = 100;

interface Waiting {
  readonly asked: FitsAsked;
  readonly answer: (isFitting: boolean) => void;
  readonly fail: (cause: unknown) => void;
}

/**
 * Shares looks at signatures out, `count` helpers at most, since a browser looks at each in the thread that asks. What a helper that is gone was to look at, and everything where there
 * is none, is looked at by `own`.
 */
export function sharedFits(own: PlatformFits, call: () => FitsHelper, count: number): PlatformFits {
  const helpers: { readonly helper: FitsHelper; open: number; isGone: boolean }[] = [];
  let waiting: Waiting[] = [];
  const lookHere = (batch: readonly Waiting[]) => {
    for (const { asked, answer, fail } of batch) own(...asked).then(answer, fail);
  };
  const freest = (size: number) => {
    const isBusy = helpers.every(({ open }) => open > 0);
    if (isBusy && helpers.length < count && (helpers.length > 0 || size >= WORTH_HELP))
      helpers.push({ helper: call(), open: 0, isGone: false });
    return helpers.filter(({ isGone }) => !isGone).toSorted((a, b) => a.open - b.open)[0];
  };
  const handOver = () => {
    const batch = waiting;
    waiting = [];
    const one = freest(batch.length);
    if (!one) return lookHere(batch);
    one.open += batch.length;
    one.helper.look(batch.map(({ asked }) => asked)).then(
      (fits) => {
        one.open -= batch.length;
        for (const [index, { answer }] of batch.entries()) answer(fits[index] ?? false);
      },
      () => {
        one.isGone = true;
        lookHere(batch);
      },
    );
  };
  return (...asked) =>
    new Promise((answer, fail) => {
      waiting.push({ asked, answer, fail });
      if (waiting.length === AT_ONCE) handOver();
      else if (waiting.length === 1) queueMicrotask(() => waiting.length > 0 && handOver());
    });
}
