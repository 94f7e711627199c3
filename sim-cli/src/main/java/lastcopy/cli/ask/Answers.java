package lastcopy.cli.ask;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import lastcopy.cli.scenario.value.Measure;

/**
 * What is known by now, by the id of the question; never changed.
 *
 * @param given each answer
 */
record Answers(Map<String, Given> given) {

  static final Answers NONE = new Answers(Map.of());

  Answers {
    given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }

  /**
   * An answer.
   *
   * @param value as a file has it
   * @param own whether it was typed, and not only taken as suggested
   */
  record Given(String value, boolean own) {}

  Answers with(String id, Given answer) {
    Map<String, Given> more = new LinkedHashMap<>(given);
    more.put(id, answer);
    return new Answers(more);
  }

  Answers without(String id) {
    Map<String, Given> fewer = new LinkedHashMap<>(given);
    fewer.remove(id);
    return new Answers(fewer);
  }

  boolean has(String id) {
    return given.containsKey(id);
  }

  boolean isOwn(String id) {
    return has(id) && given.get(id).own();
  }

  boolean is(String id, String value) {
    return has(id) && text(id).equals(value);
  }

  /**
   * An answer as a file has it.
   *
   * @throws IllegalStateException if there is none
   */
  String text(String id) {
    if (!has(id)) {
      throw new IllegalStateException("no answer to " + id);
    }
    return given.get(id).value();
  }

  int whole(String id) {
    return Integer.parseInt(text(id));
  }

  double bytes(String id) {
    return Measure.SIZE.read(text(id)).orElseThrow();
  }

  double hours(String id) {
    return Measure.TIME.read(text(id)).orElseThrow();
  }

  /** Bytes a second. */
  double link(String id) {
    return Measure.LINK.read(text(id)).orElseThrow();
  }
}
