export { AnswerError } from "./answer-error.ts";
export { answerErrors, answerOf, answerRaw, answerUnreadable, sendAnswer } from "./error-answers.ts";
