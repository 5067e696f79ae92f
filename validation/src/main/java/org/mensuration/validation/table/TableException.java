package org.mensuration.validation.table;

/** A table that cannot be read or does not fit its formula. Immutable and thread-safe. */
public final class TableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private TableException(String message) {
    super(message);
  }

  /**
   * States what was found at a line and what was wanted.
   *
   * @param file name of the table
   * @param line line in the file, from 1
   * @param found what stands there
   * @param wanted what should stand there
   * @return the exception
   */
  public static TableException at(String file, long line, String found, String wanted) {
    return new TableException(file + ", line " + line + ": found " + found + ", wanted " + wanted);
  }

  /**
   * States what is wrong with a table as a whole.
   *
   * @param file name of the table
   * @param problem what is wrong
   * @return the exception
   */
  public static TableException of(String file, String problem) {
    return new TableException(file + ": " + problem);
  }
}
