/** Something that stops the start and that the person can mend: told as a sentence, without a stack. */
export class StartProblem extends Error {
  override name = 'StartProblem';
}
