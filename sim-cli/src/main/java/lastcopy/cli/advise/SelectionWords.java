package lastcopy.cli.advise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastcopy.decide.Advice;
import lastcopy.experiment.Settings;
import lastcopy.words.PercentWords;

/** Sentences on what was weighed, and on how far the answers are settled. */
record SelectionWords(AdviceFindings findings) {

  private static final int NAMED = 5;

  /** How many there were, and how many were left. */
  String counts() {
    int all = findings.advice().candidates().size();
    int not = findings.candidates().impossible().size();
    String what =
        findings.candidates().areOnlyLayouts()
            ? String.format("The file leaves nothing open: its %s weighed.", layoutsWere(all))
            : String.format("What the file leaves open makes %s.", layouts(all));
    String impossible =
        not == 0
            ? ""
            : String.format(
                Locale.ROOT,
                " %,d more %s no valid layout (--impossible tells why).",
                not,
                not == 1 ? "combination is" : "combinations are");
    String left =
        findings.beaten() == 0
            ? ""
            : String.format(
                " %s left early, since another surely costs no more and surely loses footage less"
                    + " often.",
                layoutsWere(findings.beaten()));
    return what + impossible + left;
  }

  private static String layouts(long many) {
    return String.format(Locale.ROOT, "%,d %s", many, many == 1 ? "layout" : "layouts");
  }

  private static String layoutsWere(long many) {
    return layouts(many) + (many == 1 ? " was" : " were");
  }

  /** What was not told apart: who else may be an answer, and on which side of a limit some are. */
  Optional<String> open() {
    List<String> parts = new ArrayList<>();
    List<String> rivals =
        findings.advice().openQuestions().stream()
            .filter(each -> !each.candidate().equals(each.against()))
            .map(Advice.OpenQuestion::candidate)
            .distinct()
            .toList();
    if (!rivals.isEmpty()) {
      parts.add(
          String.format(
              Locale.ROOT,
              "Not settled: %,d %s (%s) may be as good as what is named here, or better.",
              rivals.size(),
              rivals.size() == 1 ? "other layout" : "other layouts",
              some(rivals)));
    }
    side(Advice.About.TARGET, "target").ifPresent(parts::add);
    side(Advice.About.BUDGET, "budget").ifPresent(parts::add);
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    more().ifPresent(parts::add);
    return Optional.of(String.join(" ", parts));
  }

  private Optional<String> side(Advice.About about, String limit) {
    List<String> near =
        findings.advice().openQuestions().stream()
            .filter(each -> each.about() == about && each.candidate().equals(each.against()))
            .map(Advice.OpenQuestion::candidate)
            .toList();
    return near.isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.format(
                "Not settled: whether %s%s stays within the %s.",
                near.size() == 1 ? "" : "any of ", some(near), limit));
  }

  private static String some(List<String> ids) {
    String first = String.join(", ", ids.subList(0, Math.min(NAMED, ids.size())));
    return ids.size() > NAMED ? first + ", ..." : first;
  }

  /** What stopped it; without any limit it went on until no more could be told. */
  private Optional<String> more() {
    Settings settings = findings.settings();
    if (settings.histories().isPresent()) {
      return Optional.of("More histories (--histories) or more time (--time) may tell.");
    }
    return settings.time().isPresent() || !findings.advice().finished()
        ? Optional.of("More time (--time) may tell.")
        : Optional.empty();
  }

  /** How sure all of it is. */
  String guarantee() {
    return String.format(
        Locale.ROOT,
        "What is settled is right with a chance of %s %%, all together, but for what hardly matters:"
            + " a chance of loss within a quarter, a cost within a hundredth, a tenth at the target."
            + " Histories of all layouts share their luck; seed %d.",
        PercentWords.of(1 - findings.advice().wrongPick()),
        findings.settings().seed());
  }
}
