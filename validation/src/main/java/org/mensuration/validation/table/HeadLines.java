package org.mensuration.validation.table;

/**
 * The lines with a number sign at the start of a file. Immutable and thread-safe.
 *
 * @param count how many there are
 * @param rest the text below them
 */
record HeadLines(long count, String rest) {

  /** Gives every line to a parser. */
  static HeadLines feed(HeadParser parser, String text) {
    long line = 0;
    int start = text.startsWith("\uFEFF") ? 1 : 0;
    while (start < text.length() && text.charAt(start) == '#') {
      int end = text.indexOf('\n', start);
      int stop = end < 0 ? text.length() : end;
      line++;
      parser.line(line, text.substring(start + 1, stop).strip());
      start = end < 0 ? stop : end + 1;
    }
    return new HeadLines(line, text.substring(start));
  }
}
