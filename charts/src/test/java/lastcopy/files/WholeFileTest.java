package lastcopy.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

  @TempDir Path folder;

  /** Red if the temporary name is told, which nobody asked for. */
  @Test
  void aFolderThatIsNotThereIsToldByTheNameAskedFor() {
    Path file = folder.resolve("none").resolve("r.json");
    NoSuchFileException told =
        catchThrowableOfType(
            NoSuchFileException.class, () -> WholeFile.write(file, out -> out.write(1)));
    assertThat(told.getFile()).isEqualTo(file.toString());
  }

  /** Red if only the disk's own words are told, or half a file is left, or the old one is gone. */
  @Test
  void aFullDiskIsToldWithTheFileAndLeavesTheOldOne() throws IOException {
    Path file = Files.writeString(folder.resolve("r.json"), "old");
    FileSystemException told =
        catchThrowableOfType(
            FileSystemException.class,
            () ->
                WholeFile.write(
                    file,
                    out -> {
                      out.write(1);
                      throw new IOException("No space left on device");
                    }));
    assertThat(told.getFile()).isEqualTo(file.toString());
    assertThat(told.getReason()).isEqualTo("No space left on device");
    assertThat(file).hasContent("old");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.toList()).isEqualTo(List.of(file));
    }
  }
}
