package lastcopy.cli.story;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lastcopy.story.Life;
import lastcopy.story.Survey;
import lastcopy.words.ByteUnit;

/**
 * The studios that a class draws one by one: the first plain histories of the seed, as squares in
 * the order of their numbers.
 *
 * @param losing those that lose footage, by rising number
 */
record ClassDraw(List<Square> losing) {

  /** So many are drawn. */
  static final int STUDIOS = 1_000;

  static final int COLUMNS = 50;
  private static final int CELL = 10;

  ClassDraw {
    losing = List.copyOf(losing);
  }

  /**
   * A studio that loses footage.
   *
   * @param number of the history, from 0 on
   * @param lost how much, in words
   */
  record Square(long number, String lost) {
    /** As a class counts it. */
    long place() {
      return number + 1;
    }

    long x() {
      return number % COLUMNS * CELL;
    }

    long y() {
      return number / COLUMNS * CELL;
    }
  }

  /** Of a survey that looked through at least so many. */
  static ClassDraw of(Survey survey) {
    return new ClassDraw(
        survey.lives().stream()
            .filter(life -> life.lost() && life.number() < STUDIOS)
            .map(ClassDraw::square)
            .toList());
  }

  private static Square square(Life life) {
    return new Square(life.number(), ByteUnit.format(life.lostBytes()));
  }

  int width() {
    return COLUMNS * CELL;
  }

  int height() {
    return STUDIOS / COLUMNS * CELL;
  }

  int count() {
    return losing.size();
  }

  /** For the script: numbers, and what each loses. */
  String data() {
    return losing.stream()
        .map(square -> square.place() + ":" + square.lost())
        .collect(Collectors.joining(";"));
  }

  /** What the finished picture shows. */
  String pictured() {
    String which =
        losing.isEmpty()
            ? "none loses footage"
            : losing.size() == 1 ? "1 loses footage" : losing.size() + " lose footage";
    return String.format(Locale.ROOT, "%,d studios drawn as squares: %s", STUDIOS, which);
  }
}
