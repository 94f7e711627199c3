package lastcopy.cli.ask;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A copy of a layout, before it is written or drawn.
 *
 * @param id as in the file
 * @param place as in the file
 * @param form how its drives hold it
 * @param models of its drives, one by one; none for a service
 * @param way how footage gets there; none for the copy that is worked on
 */
record CopySketch(String id, String place, Form form, List<String> models, Optional<Way> way) {

  /** The drives that are there already, as the file calls their kind. */
  static final String OWNED = "drive-today";

  /** The drives that would be bought. */
  static final String NEW = "drive-new";

  CopySketch {
    models = List.copyOf(models);
  }

  /** How drives hold a copy. */
  enum Form {
    SINGLE(""),
    SHELF("each with different footage"),
    MIRROR("which hold the same, in one box"),
    PAIRS("in pairs that hold the same, in one box"),
    PARITY("of which one may fail, in one box"),
    SERVICE("");

    private final String words;

    Form(String words) {
      this.words = words;
    }

    /** As the file calls it. */
    String key() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }

    boolean isBoxed() {
      return this == MIRROR || this == PAIRS || this == PARITY;
    }
  }

  /**
   * How footage gets to a copy.
   *
   * @param every a time as the file has it
   * @param by what carries it
   */
  record Way(String every, By by) {}

  /** What carries footage. */
  enum By {
    CABLE("over a cable"),
    LINE("over the line"),
    HAND("carried there");

    private final String words;

    By(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** Drives each with different footage, or a single one. */
  static CopySketch row(String id, String place, String model, int drives, Optional<Way> way) {
    Form form = drives == 1 ? Form.SINGLE : Form.SHELF;
    return new CopySketch(id, place, form, Collections.nCopies(drives, model), way);
  }

  /** A copy with a paid service. */
  static CopySketch service(Way way) {
    return new CopySketch("service", "data centre", Form.SERVICE, List.of(), Optional.of(way));
  }

  /** The same with a second drive for each, in one box; those that are missing are new. */
  CopySketch mirrored(int holding) {
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < holding; i++) {
      pairs.add(i < models.size() ? models.get(i) : NEW);
      pairs.add(NEW);
    }
    return new CopySketch(id, place, holding == 1 ? Form.MIRROR : Form.PAIRS, pairs, way);
  }

  /** Such as {@code 2 x 8 TB, which hold the same, in one box}. */
  String words(String size) {
    if (form == Form.SERVICE) {
      return "a paid service";
    }
    String drives = models.size() + " x " + size;
    return form.words.isEmpty() ? drives : drives + ", " + form.words;
  }
}
