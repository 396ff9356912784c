import { XMLParser } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";

/** What a reader of Office Open XML sees of one sheet: the values by cell, such as `B7`, and the cells that are joined. */
export interface OpenedSheet {
  readonly name: string;
  readonly cells: ReadonlyMap<string, string | number>;
  readonly joined: readonly string[];
}

const asList = <Value>(value: Value | readonly Value[] | undefined): readonly Value[] =>
  value === undefined ? [] : ([value].flat() as readonly Value[]);

interface XmlCell {
  readonly "@r": string;
  readonly "@t"?: string;
  readonly v?: string;
}

/** Reads a workbook by ECMA-376 (part 1, clauses 18.2 to 18.4) alone: its sheets, shared strings and cells. */
export async function openedWorkbook(file: Blob): Promise<readonly OpenedSheet[]> {
  const parts = unzipSync(new Uint8Array(await file.arrayBuffer()));
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "@",
    parseTagValue: false,
    trimValues: false,
  });
  const part = (name: string) => {
    const bytes = parts[name];
    if (!bytes) throw new Error(`no ${name}`);
    return parser.parse(strFromU8(bytes));
  };
  const shared = asList(part("xl/sharedStrings.xml").sst.si).map((one) => {
    const t = (one as { t: string | { "#text": string } }).t;
    return typeof t === "string" ? t : t["#text"];
  });
  return asList(part("xl/workbook.xml").workbook.sheets.sheet).map((one, index) => {
    const { worksheet } = part(`xl/worksheets/sheet${index + 1}.xml`);
    const cells = new Map<string, string | number>();
    for (const row of asList(worksheet.sheetData.row) as readonly { c?: XmlCell | XmlCell[] }[]) {
      for (const cell of asList(row.c)) {
        if (cell.v === undefined) continue;
        cells.set(cell["@r"], cell["@t"] === "s" ? String(shared[Number(cell.v)]) : Number(cell.v));
      }
    }
    const joined = asList(worksheet.mergeCells?.mergeCell as { "@ref": string } | { "@ref": string }[]);
    return { name: (one as { "@name": string })["@name"], cells, joined: joined.map((j) => j["@ref"]) };
  });
}
