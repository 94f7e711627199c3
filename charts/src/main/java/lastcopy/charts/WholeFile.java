package lastcopy.charts;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all: under a temporary name beside it, then moved. */
public final class WholeFile {

  /** Writes the content of a file. */
  @FunctionalInterface
  public interface Content {
    /** Writes everything; the stream is closed by the caller. */
    void writeTo(OutputStream out) throws IOException;
  }

  private WholeFile() {}

  /**
   * Writes a file, replacing one of that name.
   *
   * @throws IOException if it cannot be written; then a file of that name is as it was
   */
  public static void write(Path file, Content content) throws IOException {
    Path target = file.toAbsolutePath();
    Path temporary = target.resolveSibling("." + target.getFileName() + "." + unique() + ".tmp");
    try {
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(temporary))) {
        content.writeTo(out);
      }
      move(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  private static String unique() {
    return ProcessHandle.current().pid() + "-" + Long.toHexString(System.nanoTime());
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
