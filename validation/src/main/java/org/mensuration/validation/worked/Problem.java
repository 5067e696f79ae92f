package org.mensuration.validation.worked;

import java.io.Serializable;

/**
 * One thing wrong in the notes, with its place. Immutable and thread-safe.
 *
 * @param file name of the file
 * @param line line, counted from 1; 0 if the whole file is meant
 * @param column name of the column, empty if the whole row is meant
 * @param found what stands there
 * @param wanted what was wanted
 */
record Problem(String file, long line, String column, String found, String wanted)
    implements Serializable {

  String text() {
    String place = line == 0 ? file : file + ", line " + line;
    String cell = column.isEmpty() ? "" : ", column " + column;
    return place + cell + ": found " + found + ", wanted " + wanted;
  }

  /** Makes an empty cell visible and cuts a long one. */
  static String quote(String cell) {
    if (cell.isEmpty()) {
      return "an empty cell";
    }
    return "\"" + (cell.length() > 60 ? cell.substring(0, 60) + "..." : cell) + "\"";
  }
}
