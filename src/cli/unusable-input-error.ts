/** Input or arguments that the program cannot use. Its message is the one sentence that the user reads. */
export class UnusableInputError extends Error {
  override readonly name = "UnusableInputError";
}
