package lastcopy.cli.ask;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastcopy.scenario.Units;
import lastcopy.words.YearWords;

/** What the footage is on, and who looks after it. */
final class DriveQuestions {

  private static final int MOST_DRIVES = 100;

  private DriveQuestions() {}

  static List<OwnerQuestion> all() {
    return List.of(
        OwnerQuestion.of(
            "main",
            "What do you work on: what is your footage on today?",
            QuestionTable.choice(
                QuestionTable.DRIVES, "drives, each with different footage on it",
                QuestionTable.MIRROR, "a box of drives in pairs that hold the same",
                QuestionTable.PARITY, "a box of drives of which any one may fail"),
            QuestionTable.DRIVES,
            "If you are not sure, it is most likely this."),
        OwnerQuestion.of(
            "kind",
            "What kind of drives are they?",
            QuestionTable.choice(
                QuestionTable.DISK, "hard disks with a plug of their own, or inside a box",
                QuestionTable.PORTABLE, "portable hard disks that fit in a pocket",
                QuestionTable.USED, "hard disks that somebody had before you",
                QuestionTable.SOLID, "solid state, without moving parts"),
            QuestionTable.DISK,
            "They are the usual kind for this much footage (common practice)."),
        size(),
        count(),
        age(),
        noticed(),
        OwnerQuestion.of(
            "wait",
            "How long until another drive is there?",
            TypedAmounts.time(
                "2 days", 0, Units.HOURS_PER_YEAR, "from 'at once' to 1 year", AT_ONCE),
            "2 days",
            "Ordered today, it comes in about that time (a guess); 'at once' with a spare on the"
                + " shelf."),
        OwnerQuestion.of(
                "together",
                "Were the drives bought at the same time?",
                QuestionTable.choice(QuestionTable.YES, "yes", "no", "no, or different makes"),
                QuestionTable.YES,
                "Drives of one delivery tend to fail alike; most people buy a box with its drives.")
            .onlyIf(before -> before.whole("drives") > 1));
  }

  static final Map<String, String> AT_ONCE = Map.of("at once", "0 h");

  private static OwnerQuestion size() {
    return OwnerQuestion.of(
            "drive-size",
            "How large is one drive?",
            TypedAmounts.size("8 TB", 1e11, 1e14, "from 100 GB to 100 TB"),
            "",
            "")
        .suggesting(
            RoomNeeded::driveSize,
            before ->
                "Within "
                    + YearWords.of(before.whole("years"))
                    + " you will have up to "
                    + RoomNeeded.words(RoomNeeded.byTheEnd(before))
                    + "; it is the smallest that holds it with room to spare, or the largest"
                    + " there is.")
        .checked(
            (before, size) -> {
              double bytes =
                  before.with("drive-size", new Answers.Given(size, true)).bytes("drive-size");
              return RoomNeeded.drives(before, bytes) > MOST_DRIVES
                  ? Optional.of(
                      "Of that size it would take more than "
                          + MOST_DRIVES
                          + " drives for all footage by then; larger ones are needed.")
                  : Optional.empty();
            });
  }

  private static OwnerQuestion count() {
    return OwnerQuestion.of(
            "drives",
            "How many drives are there, all together?",
            new Reply.Whole(1, 2 * MOST_DRIVES + 1),
            "",
            "")
        .suggesting(
            before -> String.valueOf(RoomNeeded.inAll(before, RoomNeeded.drives(before))),
            before ->
                "So many hold what you will have within "
                    + YearWords.of(before.whole("years"))
                    + ", up to "
                    + RoomNeeded.words(RoomNeeded.byTheEnd(before))
                    + ".")
        .checked(DriveQuestions::wrongCount);
  }

  private static Optional<String> wrongCount(Answers before, String count) {
    int drives = Integer.parseInt(count);
    if (before.is("main", QuestionTable.MIRROR) && drives % 2 != 0) {
      return Optional.of("Pairs take an even number of drives.");
    }
    if (before.is("main", QuestionTable.PARITY) && drives < 3) {
      return Optional.of("A box of drives of which any one may fail has at least 3.");
    }
    double room = RoomNeeded.holding(before, drives) * before.bytes("drive-size");
    return room < before.bytes("on-hand")
        ? Optional.of(
            "They hold "
                + RoomNeeded.words(room)
                + ", which is less than the footage you have; '<' goes back to that.")
        : Optional.empty();
  }

  private static OwnerQuestion age() {
    return OwnerQuestion.of(
            "age",
            "How old are they? (0 years if they are new)",
            TypedAmounts.time(
                "2 years", 0, 30 * Units.HOURS_PER_YEAR, "from 0 to 30 years", Map.of()),
            "",
            "")
        .suggesting(
            before -> isUsed(before) ? "3 years" : "1 year",
            before ->
                isUsed(before)
                    ? "Used drives have often run for about three years (a guess)."
                    : "Drives fail more often as they age; a label on them has the year.");
  }

  private static OwnerQuestion noticed() {
    return OwnerQuestion.of(
        "noticed",
        "If a drive died, how long until somebody noticed?",
        TypedAmounts.time("1 day", 0, Units.HOURS_PER_YEAR, "from 'at once' to 1 year", AT_ONCE),
        "1 day",
        "What is worked on every day is missed within a day (a guess); a box that nobody looks at"
            + " may take months.");
  }

  static boolean isUsed(Answers answers) {
    return answers.is("kind", QuestionTable.USED);
  }

  /** By the TB, from memory; in whole units of any currency. */
  static String price(Answers answers) {
    double tb = answers.bytes("drive-size") / Units.TB;
    double price =
        switch (answers.text("kind")) {
          case QuestionTable.PORTABLE -> 15 + 25 * tb;
          case QuestionTable.USED -> 10 * tb;
          case QuestionTable.SOLID -> 20 + 60 * tb;
          default -> 20 + 20 * tb;
        };
    return String.format(Locale.ROOT, "%.0f", Math.max(1, price));
  }
}
