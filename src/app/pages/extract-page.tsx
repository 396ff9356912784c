import { useParams } from "react-router-dom";
import { words } from "../../words/index.ts";
import { outsideFile } from "../outside-files/index.ts";
import { LazyExtractView } from "../seal/index.ts";
import { ScreenPage } from "./screen-page.tsx";

/** The page that shows the file of an extract. */
export function ExtractPage() {
  const { file: key = "" } = useParams();
  const file = outsideFile(key);
  return (
    <ScreenPage screen="extract" title={words("seal/extract-page")} what={file?.name ?? ""} to={[]}>
      {file ? (
        <LazyExtractView text={file.text} />
      ) : (
        <p className="page-message" role="status">
          {words("seal/extract-gone")}
        </p>
      )}
    </ScreenPage>
  );
}
