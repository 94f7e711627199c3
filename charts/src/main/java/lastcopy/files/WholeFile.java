package lastcopy.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;

/**
 * Writes a file whole or not at all: under a temporary name beside it, then moved. Links are
 * followed; what is no regular file, such as a device or a pipe, is written to and stays.
 */
public final class WholeFile {

  private static final int MOST_LINKS = 40;

  private static final Set<PosixFilePermission> WRITE =
      Set.of(
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.GROUP_WRITE,
          PosixFilePermission.OTHERS_WRITE);

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
   * @throws IOException if it cannot be written, and names it; then a file of that name is as it
   *     was
   */
  public static void write(Path file, Content content) throws IOException {
    Path target = target(file);
    try {
      if (isSpecial(target)) {
        straight(target, content);
      } else {
        beside(target, content);
      }
    } catch (IOException e) {
      throw named(file, e);
    }
  }

  /** Nobody asked for the temporary name, and a full disk names no file at all. */
  private static IOException named(Path file, IOException e) {
    String name = file.toString();
    FileSystemException named;
    if (e instanceof NoSuchFileException) {
      named = new NoSuchFileException(name);
    } else if (e instanceof AccessDeniedException denied) {
      named = new AccessDeniedException(name, null, denied.getReason());
    } else {
      boolean known = e instanceof FileSystemException other && other.getReason() != null;
      String reason = known ? ((FileSystemException) e).getReason() : e.getMessage();
      named = new FileSystemException(name, null, reason);
    }
    named.initCause(e);
    return named;
  }

  private static void beside(Path target, Content content) throws IOException {
    Path temporary = target.resolveSibling("." + unique() + ".tmp");
    try {
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(temporary))) {
        content.writeTo(out);
      }
      move(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /**
   * Where a file of that name would be written: links followed, also to what is not there yet.
   *
   * @throws IOException if nothing can be written there: a directory, what is read-only, a circle
   *     of links
   */
  public static Path target(Path file) throws IOException {
    Path at = file.toAbsolutePath();
    // A link to an open pipe, as under /dev/fd, leads nowhere by its text, but opens.
    for (int links = 0; Files.isSymbolicLink(at) && !isSpecial(at); links++) {
      if (links == MOST_LINKS) {
        throw new FileSystemLoopException(file.toString());
      }
      at = at.resolveSibling(Files.readSymbolicLink(at)).toAbsolutePath();
    }
    if (Files.isDirectory(at)) {
      throw new FileSystemException(file.toString(), null, "is a directory");
    }
    if (Files.exists(at) && isReadOnly(at)) {
      throw new AccessDeniedException(file.toString(), null, "is read-only");
    }
    return at;
  }

  private static boolean isSpecial(Path file) {
    return Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file);
  }

  /** A privileged user may write to anything, so the file's own mark is looked at too. */
  private static boolean isReadOnly(Path file) throws IOException {
    if (!Files.isWritable(file)) {
      return true;
    }
    PosixFileAttributeView posix =
        Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    return posix != null
        && posix.readAttributes().permissions().stream().noneMatch(WRITE::contains);
  }

  private static void straight(Path target, Content content) throws IOException {
    try (OutputStream out =
        new BufferedOutputStream(Files.newOutputStream(target, StandardOpenOption.WRITE))) {
      content.writeTo(out);
    }
  }

  /** Short, since a name as long as the system allows leaves no room for more. */
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
