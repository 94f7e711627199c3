package lastcopy.cli.ask;

import java.util.List;

/** What a file says of drives. */
final class DriveLines {

  private static final int INDENT = 4;

  private DriveLines() {}

  /** Those that are there. */
  static List<String> owned(Answers answers) {
    Lines lines =
        common(answers)
            .remark("owned", "true", "paid already; only what replaces it costs")
            .answer("age", answers.text("age"), "age");
    return bought(lines, answers).all();
  }

  /** Those that would be bought. */
  static List<String> bought(Answers answers) {
    Lines lines = common(answers);
    if (DriveQuestions.isUsed(answers)) {
      lines.assumed("age", answers.text("age"), "used ones again, as old as those there");
    }
    return bought(lines, answers).all();
  }

  private static Lines bought(Lines lines, Answers answers) {
    return DriveQuestions.isUsed(answers)
        ? lines.assumed("bought_at", answers.text("age"), "and those that replace it")
        : lines;
  }

  private static Lines common(Answers answers) {
    String kind = answers.text("kind");
    boolean light = kind.equals(QuestionTable.PORTABLE) || kind.equals(QuestionTable.SOLID);
    String speed =
        switch (kind) {
          case QuestionTable.PORTABLE -> "100 MB/s";
          case QuestionTable.SOLID -> "400 MB/s";
          default -> "120 MB/s";
        };
    return new Lines(answers, INDENT)
        .answer("size", answers.text("drive-size"), "drive-size")
        .answer("price", answers.text("price"), "price")
        .assumed("power", light ? "2 W" : "6 W")
        .assumed("speed", speed)
        .answer("fails", "{typical: " + kind + "}", "kind");
  }
}
