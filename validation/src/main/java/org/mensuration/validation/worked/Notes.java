package org.mensuration.validation.worked;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the files of notes come from. Immutable and thread-safe. */
@FunctionalInterface
interface Notes {
  /** Opens a file by its name. */
  InputStream open(String file) throws IOException;

  /** Whether there is a file that may be left out. */
  default boolean has(String file) {
    return false;
  }

  /** The invented notes that ship with the library. */
  static Notes demo() {
    return new Demo();
  }

  /** Notes in a folder. */
  static Notes folder(Path folder) {
    return new Folder(folder);
  }

  /** The invented notes. Immutable and thread-safe. */
  record Demo() implements Notes {
    @Override
    public InputStream open(String file) throws IOException {
      InputStream stream = Notes.class.getResourceAsStream(file);
      if (stream == null) {
        throw new IOException(file + " is missing from the library");
      }
      return stream;
    }

    @Override
    public boolean has(String file) {
      return Notes.class.getResource(file) != null;
    }
  }

  /**
   * Notes of a crew. Immutable and thread-safe.
   *
   * @param path the folder
   */
  record Folder(Path path) implements Notes {
    @Override
    public InputStream open(String file) throws IOException {
      return Files.newInputStream(path.resolve(file));
    }

    @Override
    public boolean has(String file) {
      return Files.exists(path.resolve(file));
    }
  }
}
