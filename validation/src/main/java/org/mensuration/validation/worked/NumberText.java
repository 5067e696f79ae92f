package org.mensuration.validation.worked;

import java.util.regex.Pattern;

/**
 * Reads the numbers of one file. A file keeps to one decimal mark, since 1.234 beside 5,6 may be a
 * thousand; so this remembers the first mark it met. Not thread-safe.
 */
final class NumberText {
  private static final Pattern PLAIN = Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?");
  private static final Pattern GROUPED =
      Pattern.compile("[+-]?[0-9]{1,3}([.,' \u00a0\u202f][0-9]{3})+([.,][0-9]+)?");

  private final boolean commaAllowed;
  private char mark;
  private long markLine;

  NumberText(boolean commaAllowed) {
    this.commaAllowed = commaAllowed;
  }

  /** What is wrong with a cell as a number; empty if nothing is. */
  String fault(String cell, long line) {
    if (!PLAIN.matcher(cell).matches()) {
      return GROUPED.matcher(cell).matches()
          ? "a number without thousands marks, such as 1234" + (commaAllowed ? ",5" : ".5")
          : "a number such as 12" + (commaAllowed ? ",5 or 12.5" : ".5");
    }
    char here = cell.indexOf(',') >= 0 ? ',' : cell.indexOf('.') >= 0 ? '.' : 0;
    if (here == ',' && !commaAllowed) {
      return "a decimal point: a decimal comma is read only in files separated by semicolons";
    }
    if (here != 0 && mark != 0 && here != mark) {
      return "the decimal mark '" + mark + "' that this file uses since line " + markLine;
    }
    if (here != 0 && mark == 0) {
      mark = here;
      markLine = line;
    }
    return "";
  }

  /** The value of a cell without fault. Digits without end may give an infinity: check limits. */
  static double value(String cell) {
    return Double.parseDouble(cell.replace(',', '.'));
  }
}
