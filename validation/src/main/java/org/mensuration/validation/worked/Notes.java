package org.mensuration.validation.worked;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the four files of notes come from. Immutable and thread-safe. */
@FunctionalInterface
interface Notes {
  /** Opens a file by its name. */
  InputStream open(String file) throws IOException;

  /** The invented notes that ship with the library. */
  static Notes demo() {
    return file -> {
      InputStream stream = Notes.class.getResourceAsStream(file);
      if (stream == null) {
        throw new IOException(file + " is missing from the library");
      }
      return stream;
    };
  }

  /** Notes in a folder. */
  static Notes folder(Path folder) {
    return file -> Files.newInputStream(folder.resolve(file));
  }
}
