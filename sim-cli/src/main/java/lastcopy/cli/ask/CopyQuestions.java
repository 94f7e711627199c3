package lastcopy.cli.ask;

import java.util.List;
import java.util.Map;
import lastcopy.cli.scenario.value.Measure;
import lastcopy.scenario.Units;

/** Where copies are, and how they get there. */
final class CopyQuestions {

  private CopyQuestions() {}

  static List<OwnerQuestion> all() {
    return List.of(
        OwnerQuestion.of(
            "place",
            "Where does it stand?",
            QuestionTable.choice(
                QuestionTable.STUDIO, "in a studio, shop or office",
                QuestionTable.HOME, "at home"),
            QuestionTable.STUDIO,
            "A place for work; it is broken into, and burns, more often than a home."),
        OwnerQuestion.of(
            "second",
            "Is there a second copy of everything?",
            QuestionTable.choice(
                QuestionTable.NONE, "no",
                QuestionTable.BESIDE, "yes, on drives that stand beside the first",
                QuestionTable.AWAY, "yes, on drives in another place",
                QuestionTable.SERVICE, "yes, with a paid service"),
            QuestionTable.NONE,
            "Two drives that hold the same in one box are one copy, not two."),
        every(),
        OwnerQuestion.of(
            "uplink",
            "How fast is your line to the internet, upwards?",
            new Reply.Measured(
                Measure.LINK,
                "40 Mbit/s",
                1e5 / 8,
                1e11 / 8,
                "from 0.1 Mbit/s to 100 Gbit/s",
                Map.of()),
            "40 Mbit/s",
            "It carries about 410 GB a day at best; the contract has the figure, a test on the web"
                + " the truth."),
        OwnerQuestion.of(
            "tried",
            "How often does somebody try to restore from a copy? (a time, or 'never')",
            TypedAmounts.time(
                "3 months",
                Units.HOURS_PER_DAY,
                30 * Units.HOURS_PER_YEAR,
                "from 1 day to 30 years",
                Map.of(QuestionTable.NEVER, QuestionTable.NEVER)),
            "3 months",
            "A copy counts only once that has worked; if nobody will, say 'never'."),
        OwnerQuestion.of(
            "desk",
            "How is footage deleted?",
            QuestionTable.choice(
                "usual", "by whoever needs room, as it comes",
                "careful", "only after a second person has looked"),
            "usual",
            "Deleting the wrong thing is among the commonest ways to lose a shoot."));
  }

  private static OwnerQuestion every() {
    return OwnerQuestion.of(
            "every",
            "How often is the second copy brought up to date?",
            TypedAmounts.time(
                "1 week",
                Units.HOURS_PER_DAY / 24,
                5 * Units.HOURS_PER_YEAR,
                "from 1 hour to 5 years",
                Map.of()),
            "",
            "")
        .suggesting(
            before -> before.is("second", QuestionTable.AWAY) ? "1 week" : "1 day",
            before ->
                before.is("second", QuestionTable.AWAY)
                    ? "Drives that are carried are carried about once a week (common practice)."
                    : "Programs that copy do it every night (common practice).")
        .onlyIf(before -> !before.is("second", QuestionTable.NONE));
  }
}
