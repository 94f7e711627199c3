package lastcopy.cli.ask;

import java.util.List;
import java.util.stream.Stream;

/**
 * A layout, before it is written or drawn.
 *
 * @param id as in the file
 * @param title for tables and pictures
 * @param copies the one that is worked on first
 * @param watched whether somebody looks every day, and a spare drive lies on the shelf
 */
record LayoutSketch(String id, String title, List<CopySketch> copies, boolean watched) {

  LayoutSketch {
    copies = List.copyOf(copies);
  }

  CopySketch main() {
    return copies.get(0);
  }

  /** The same with another working copy. */
  LayoutSketch working(String otherId, String otherTitle, CopySketch main) {
    return new LayoutSketch(
        otherId,
        otherTitle,
        Stream.concat(Stream.of(main), copies.stream().skip(1)).toList(),
        watched);
  }

  /** The same and more copies. */
  LayoutSketch and(String otherId, String otherTitle, CopySketch... more) {
    return new LayoutSketch(
        otherId, otherTitle, Stream.concat(copies.stream(), Stream.of(more)).toList(), watched);
  }

  /** The same, looked at every day and with a drive on the shelf. */
  LayoutSketch watched(String otherId, String otherTitle) {
    return new LayoutSketch(otherId, otherTitle, copies, true);
  }
}
