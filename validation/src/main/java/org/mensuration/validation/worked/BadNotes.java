package org.mensuration.validation.worked;

/** Ends the work on a row, or on all notes where a file cannot be read at all. */
final class BadNotes extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Problem problem;
  private final boolean reference;

  BadNotes(Problem problem) {
    this(problem, false);
  }

  /**
   * States what is wrong.
   *
   * @param problem the problem
   * @param reference whether a row is missed that may itself have been bad
   */
  BadNotes(Problem problem, boolean reference) {
    super(problem.text());
    this.problem = problem;
    this.reference = reference;
  }

  Problem problem() {
    return problem;
  }

  boolean reference() {
    return reference;
  }
}
