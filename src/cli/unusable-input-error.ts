/** Input or arguments the program can do nothing with. Its message is the one sentence the user reads. */
export class UnusableInputError extends Error {
  override readonly name = "UnusableInputError";
}
