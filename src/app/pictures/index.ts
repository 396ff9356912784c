export { StepPictures } from "./step-pictures.tsx";
