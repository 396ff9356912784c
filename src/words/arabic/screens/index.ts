import type { screenWords as english } from "../../english/screens/index.ts";
import type { Translated } from "../../translated.ts";
import { alertWords } from "./alerts.ts";
import { amendingWords } from "./amending.ts";
import { amendmentWords } from "./amendments.ts";
import { backupWords } from "./backup.ts";
import { briefWords } from "./brief.ts";
import { cardsWords } from "./cards.ts";
import { changesWords } from "./changes.ts";
import { compareWords } from "./compare.ts";
import { courseWords } from "./course.ts";
import { decisionWords } from "./decisions.ts";
import { effectWords } from "./effect.ts";
import { figureGapWords } from "./figure-gaps.ts";
import { findingsOfFileWords } from "./findings-file.ts";
import { findingsOfPlanWords } from "./findings-plan.ts";
import { findingsOfProcedureWords } from "./findings-procedure.ts";
import { findingsOfReferencesWords } from "./findings-references.ts";
import { fitWords } from "./fit.ts";
import { followWords } from "./follow.ts";
import { followAlertWords } from "./follow-alerts.ts";
import { followPanelWords } from "./follow-panels.ts";
import { fragmentWords } from "./fragments.ts";
import { handoverWords } from "./handover.ts";
import { helpWords } from "./help.ts";
import { helpOfBriefWords } from "./help-brief.ts";
import { helpOfCompareWords } from "./help-compare.ts";
import { helpOfFollowWords } from "./help-follow.ts";
import { helpOfHandoverWords } from "./help-handover.ts";
import { helpOfJoinWords } from "./help-join.ts";
import { helpOfLearnWords } from "./help-learn.ts";
import { helpOfMapWords } from "./help-map.ts";
import { helpOfReadWords } from "./help-read.ts";
import { helpOfRemarksWords } from "./help-remarks.ts";
import { helpOfReviewWords } from "./help-review.ts";
import { helpOfShelfWords } from "./help-shelf.ts";
import { helpOfTimelineWords } from "./help-timeline.ts";
import { helpOfWriteWords } from "./help-write.ts";
import { languagesWords } from "./languages.ts";
import { learnWords } from "./learn.ts";
import { libraryWords } from "./library.ts";
import { lightSourceWords } from "./light-source.ts";
import { linkWords } from "./link.ts";
import { linkStateWords } from "./link-state.ts";
import { mapWords } from "./map.ts";
import { marksWords } from "./marks.ts";
import { outlookWords } from "./outlook.ts";
import { outstandingWords } from "./outstanding.ts";
import { paperWords } from "./paper.ts";
import { picturesWords } from "./pictures.ts";
import { planWords } from "./plan.ts";
import { posterWords } from "./poster.ts";
import { practiceWords } from "./practice.ts";
import { printWords } from "./print.ts";
import { readWords } from "./read.ts";
import { remarkWords } from "./remarks.ts";
import { reviewWords } from "./review.ts";
import { reviewTableWords } from "./review-tables.ts";
import { sealWords } from "./seal.ts";
import { splitWords } from "./split.ts";
import { struckWords } from "./struck.ts";
import { supplyWords } from "./supplies.ts";
import { surpriseWords } from "./surprises.ts";
import { takingInWords } from "./taking-in.ts";
import { textPaneWords } from "./text-pane.ts";
import { textsWords } from "./texts.ts";
import { timelineWords } from "./timeline.ts";
import { trainWords } from "./train.ts";
import { walkWords } from "./walk.ts";
import { walksComparedWords } from "./walks-compared.ts";
import { workbookWords } from "./workbook.ts";
import { writeWords } from "./write.ts";
import { writeFieldWords } from "./write-fields.ts";
import { writeMapWords } from "./write-map.ts";
import { writeScreenWords } from "./write-screen.ts";
import { pastedTableWords } from "./write-table.ts";

/** What the screens behind the shelf say, with all that is said of procedures and walks: loaded beside the first of them. */
export const screenWords: Translated<typeof english> = {
  ...alertWords,
  ...amendingWords,
  ...amendmentWords,
  ...backupWords,
  ...briefWords,
  ...cardsWords,
  ...changesWords,
  ...compareWords,
  ...courseWords,
  ...decisionWords,
  ...effectWords,
  ...figureGapWords,
  ...findingsOfFileWords,
  ...findingsOfPlanWords,
  ...findingsOfProcedureWords,
  ...findingsOfReferencesWords,
  ...fitWords,
  ...followWords,
  ...followAlertWords,
  ...followPanelWords,
  ...fragmentWords,
  ...helpWords,
  ...helpOfBriefWords,
  ...helpOfCompareWords,
  ...helpOfFollowWords,
  ...helpOfHandoverWords,
  ...helpOfJoinWords,
  ...helpOfLearnWords,
  ...helpOfMapWords,
  ...helpOfReadWords,
  ...helpOfRemarksWords,
  ...helpOfReviewWords,
  ...helpOfShelfWords,
  ...helpOfTimelineWords,
  ...helpOfWriteWords,
  ...handoverWords,
  ...languagesWords,
  ...learnWords,
  ...lightSourceWords,
  ...linkWords,
  ...linkStateWords,
  ...mapWords,
  ...outstandingWords,
  ...marksWords,
  ...outlookWords,
  ...paperWords,
  ...picturesWords,
  ...planWords,
  ...posterWords,
  ...practiceWords,
  ...printWords,
  ...readWords,
  ...remarkWords,
  ...reviewWords,
  ...reviewTableWords,
  ...libraryWords,
  ...sealWords,
  ...splitWords,
  ...struckWords,
  ...supplyWords,
  ...surpriseWords,
  ...takingInWords,
  ...textPaneWords,
  ...textsWords,
  ...timelineWords,
  ...trainWords,
  ...walkWords,
  ...pastedTableWords,
  ...writeWords,
  ...workbookWords,
  ...walksComparedWords,
  ...writeFieldWords,
  ...writeMapWords,
  ...writeScreenWords,
};
