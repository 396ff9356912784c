export { BeyondBoard, beyondDocument } from "./beyond-board.ts";
