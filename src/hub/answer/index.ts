export { AnswerError } from "./answer-error.ts";
export { answerErrors, answerOf, answerUnreadable, sendAnswer } from "./error-answers.ts";
