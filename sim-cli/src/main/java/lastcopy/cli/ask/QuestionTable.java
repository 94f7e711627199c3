package lastcopy.cli.ask;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lastcopy.scenario.Units;

/** Everything that is asked, in its order. */
final class QuestionTable {

  static final String FOR_GOOD = "for good";
  static final String NEVER = "never";
  static final String YES = "yes";

  /** Ways of keeping footage. */
  static final String DRIVES = "drives";

  static final String MIRROR = "mirror";
  static final String PARITY = "parity";

  /** Second copies. */
  static final String NONE = "none";

  static final String BESIDE = "beside";
  static final String AWAY = "elsewhere";
  static final String SERVICE = "service";

  /** Kinds of drives, named as the typical lives of a file are. */
  static final String DISK = "hard-disk";

  static final String PORTABLE = "portable";
  static final String USED = "used-hard-disk";
  static final String SOLID = "solid-state";

  static final String STUDIO = "studio";
  static final String HOME = "home";

  /** More is no small studio's. */
  private static final double MOST_BYTES = 5e14;

  private QuestionTable() {}

  /** All of them; some are asked only after certain answers. */
  static List<OwnerQuestion> all() {
    return Stream.of(footage(), DriveQuestions.all(), CopyQuestions.all(), money())
        .flatMap(List::stream)
        .toList();
  }

  static Reply.Choice choice(String... idsAndWords) {
    return new Reply.Choice(
        Stream.iterate(0, i -> i < idsAndWords.length, i -> i + 2)
            .map(i -> new Reply.Choice.Option(idsAndWords[i], idsAndWords[i + 1]))
            .toList());
  }

  private static List<OwnerQuestion> footage() {
    return List.of(
        OwnerQuestion.of(
            "studio",
            "What is your studio called?",
            new Reply.Name(60),
            "My studio",
            "The name stands above the tables and on the page, and nowhere else."),
        OwnerQuestion.of(
            "years",
            "How many years ahead shall we look?",
            new Reply.Whole(1, 30),
            "5",
            "Drives are often kept about that long (common practice)."),
        OwnerQuestion.of(
            "shoots",
            "How many shoots do you have a year?",
            new Reply.Whole(1, 1_000),
            "50",
            "That is about one a week."),
        OwnerQuestion.of(
                "size",
                "How much footage does one shoot bring?",
                TypedAmounts.size("100 GB", 1e7, 1e13, "from 10 MB to 10 TB"),
                "40 GB",
                "A wedding in photos is 16 to 64 GB, one on video 110 to 405 GB (common practice).")
            .checked(TypedAmounts::notTooMuch),
        OwnerQuestion.of(
                "on-hand",
                "How much footage is there already?",
                TypedAmounts.size("3 TB", 0, MOST_BYTES, "from 0 GB to 500 TB"),
                "",
                "")
            .suggesting(
                before -> RoomNeeded.words(Math.min(MOST_BYTES, RoomNeeded.yearly(before))),
                before ->
                    (RoomNeeded.yearly(before) <= MOST_BYTES
                            ? "That is a year of shoots as you have them now;"
                            : "A year of shoots as you have them now is more, but this is for up"
                                + " to so much;")
                        + " your computer shows how much it is."),
        OwnerQuestion.of(
            "keep",
            "How long must a shoot be kept? (a time, or 'for good')",
            TypedAmounts.time(
                "2 years",
                Units.HOURS_PER_MONTH,
                100 * Units.HOURS_PER_YEAR,
                "from 1 month to 100 years",
                Map.of(FOR_GOOD, FOR_GOOD)),
            FOR_GOOD,
            "Nothing is thrown away unless you say so; raw footage is often kept for about 2"
                + " years (a guess)."));
  }

  private static List<OwnerQuestion> money() {
    return List.of(
        OwnerQuestion.of(
            "currency",
            "In which currency do you reckon?",
            new Reply.Name(5),
            "EUR",
            "It is a label in front of amounts; nothing is converted."),
        OwnerQuestion.of(
            "worth",
            "What is a shoot worth: what would it cost you if it were gone?",
            new Reply.Money(1_000_000),
            "900",
            "What you would pay back, or spend to shoot it again (a guess)."),
        OwnerQuestion.of(
                "price", "What does one drive of that kind cost?", new Reply.Money(100_000), "", "")
            .suggesting(
                before -> DriveQuestions.price(before),
                before -> "A guess by the size; look at your last bill."),
        OwnerQuestion.of(
            "hour",
            "What is an hour of your own time worth?",
            new Reply.Money(10_000),
            "40",
            "Replacing drives and trying restores takes hours (a guess)."));
  }
}
