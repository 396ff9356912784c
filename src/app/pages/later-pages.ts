import { wholeLanguage } from "../language/index.ts";

// Every page but the shelf needs words that are not in the first load, so these are loaded with the page.
const PAGES = {
  write: async () => (await import("./write-page.tsx")).WritePage,
  read: async () => (await import("./read-page.tsx")).ReadPage,
  plan: async () => (await import("./plan-page.tsx")).PlanPage,
  print: async () => (await import("./print-page.tsx")).PrintPage,
  follow: async () => (await import("./follow-page.tsx")).FollowPage,
  join: async () => (await import("./join-page.tsx")).JoinPage,
  timeline: async () => (await import("./timeline-page.tsx")).TimelinePage,
  train: async () => (await import("./train-page.tsx")).TrainPage,
  review: async () => (await import("./review-page.tsx")).ReviewPage,
  learn: async () => (await import("./learn-page.tsx")).LearnPage,
  walks: async () => (await import("./walks-page.tsx")).WalksPage,
  marks: async () => (await import("./marks-page.tsx")).MarksPage,
  compare: async () => (await import("./compare-page.tsx")).ComparePage,
  extract: async () => (await import("./extract-page.tsx")).ExtractPage,
  library: async () => (await import("./library-page.tsx")).LibraryPage,
  "print-compare": async () => (await import("./print-compare-page.tsx")).PrintComparePage,
  brief: async () => (await import("./brief-page.tsx")).BriefPage,
  "brief-sheet": async () => (await import("./brief-sheet-page.tsx")).BriefSheetPage,
  handover: async () => (await import("./handover-page.tsx")).HandoverPage,
  "print-paper": async () => (await import("./print-paper-page.tsx")).PrintPaperPage,
  "print-walk": async () => (await import("./print-review-page.tsx")).PrintReviewPage,
};

/** The name of a page that is not in the first load. */
type PageName = keyof typeof PAGES;

type Page<Name extends PageName> = Awaited<ReturnType<(typeof PAGES)[Name]>>;

/** Loads a page, and the words of all pages beside it. Rejects when either cannot be loaded. */
export async function laterPage<Name extends PageName>(name: Name): Promise<Page<Name>> {
  const [page] = await Promise.all([PAGES[name]() as Promise<Page<Name>>, wholeLanguage()]);
  return page;
}
