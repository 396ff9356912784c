export { csvOf } from "./csv-of.ts";
export { planCsv } from "./plan-csv.ts";
export { planSheets } from "./plan-sheets.ts";
export type { Cell, CellValue, Sheet } from "./sheet.ts";
export { workbookFile } from "./workbook-file.ts";
