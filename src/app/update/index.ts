export { UpdateNotice } from "./update-notice.tsx";
