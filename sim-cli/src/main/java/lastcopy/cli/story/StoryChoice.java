package lastcopy.cli.story;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Progress;
import lastcopy.interval.Estimate;
import lastcopy.story.Life;
import lastcopy.story.LossSearch;
import lastcopy.story.SearchLimit;
import lastcopy.story.Stories;
import lastcopy.story.Story;
import lastcopy.story.Survey;
import lastcopy.story.UnlikelyLosses;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;

/** Chooses the history to tell, and says in words how it was chosen. */
final class StoryChoice {

  /** The search for a loss where nothing was asked for. */
  private static final SearchLimit SHORT_SEARCH =
      new SearchLimit(100_000, Optional.of(Duration.ofSeconds(5)));

  private static final double CONFIDENCE = 0.95;

  private final Stories stories;
  private final UnlikelyLosses unlikely;
  private final Progress watch;

  StoryChoice(Stories stories, UnlikelyLosses unlikely, Progress watch) {
    this.stories = stories;
    this.unlikely = unlikely;
    this.watch = watch;
  }

  /** The history of a number. */
  Told history(long number) {
    return told(
        "history", 0, true, stories.tell(number), List.of("It was asked for by its number."));
  }

  /** The first that loses anything. */
  Told firstLoss(SearchLimit limit) {
    LossSearch found = stories.firstLoss(limit, watch);
    if (found.number().isPresent()) {
      return firstLoss(found);
    }
    Optional<Story> loss = found.finished() ? unlikely.first() : Optional.empty();
    Told told =
        loss.isPresent()
            ? biased("first-loss", found.searched(), loss.get(), none(found))
            : new Told(
                Optional.empty(),
                "first-loss",
                found.searched(),
                List.of(none(found)),
                found.finished());
    return told.andHow("--near-miss tells the plain history in which a loss was nearest.");
  }

  /** The biased history of a number; the plain one if no bias leads to a loss. */
  Told biased(long number) {
    return unlikely
        .tell(number)
        .map(story -> biased("history", 0, story, "It was asked for by its number."))
        .orElseGet(
            () -> history(number).andHow("It is a plain one: no bias of it leads to a loss."));
  }

  private Told biased(String selector, long searched, Story story, String first) {
    LayoutResult result = unlikely.chance(CONFIDENCE, watch);
    List<String> how = new ArrayList<>();
    how.add(first);
    how.addAll(BiasedWords.of(result, story.studio().years()));
    return new Told(
        Optional.of(story),
        selector,
        searched,
        how,
        !watch.cancelled(),
        Optional.of(result.anyLoss()));
  }

  private Told firstLoss(LossSearch found) {
    long number = found.number().getAsLong();
    String before =
        number == 0
            ? "It is the very first history, and it loses footage."
            : String.format(
                Locale.ROOT,
                "It is the first that loses footage; %s before it lost nothing.",
                number == 1 ? "the one" : String.format(Locale.ROOT, "the %,d", number));
    return told("first-loss", found.searched(), true, stories.tell(number), List.of(before));
  }

  private static String none(LossSearch found) {
    Estimate chance = found.chanceIfNone(CONFIDENCE);
    return String.format(
        Locale.ROOT,
        "None of %,d histories loses anything: at most %s lose any (95 %% sure, one-sided).",
        found.searched(),
        atMost(chance.high()));
  }

  /** Rounded up, so that the chance is not told smaller than it is. */
  private static String atMost(double chance) {
    OutOf outOf = OutOf.showing(chance);
    return String.format(
        Locale.ROOT, "%,.0f of %s", Math.ceil(outOf.count(chance) - 1e-9), outOf.words());
  }

  /** A typical one. */
  Told typical(SearchLimit limit) {
    Survey survey = stories.survey(limit, watch);
    List<String> how = new ArrayList<>();
    how.add(
        String.format(
            Locale.ROOT,
            "Of the first %,d histories, %,d had no mishap and no failure at all, and %,d lost"
                + " footage.",
            survey.searched(),
            survey.searched() - survey.lives().size(),
            survey.losing()));
    Optional<Life> life = survey.typical();
    how.add(life.map(found -> median(survey, found)).orElse("So the first of them is told."));
    how.add("Typical means no more than that: it is not a forecast.");
    Story story = stories.tell(life.map(Life::number).orElse(0L));
    return told("typical", survey.searched(), survey.finished(), story, how);
  }

  private static String median(Survey survey, Life life) {
    String of =
        survey.losingIsCommoner()
            ? "most lost footage, and of those this one lost the median amount, "
                + ByteUnit.format(life.lostBytes())
            : "most lost nothing, and of those this one has the median number of happenings, "
                + life.happenings();
    return String.format(
        Locale.ROOT, "Of the %,d in which something went wrong, %s.", survey.lives().size(), of);
  }

  /** The one in which a loss was nearest; none if each history loses something. */
  Told nearMiss(SearchLimit limit) {
    Survey survey = stories.survey(limit, watch);
    Optional<Life> life = survey.nearMiss();
    OptionalLong number =
        life.isPresent() ? OptionalLong.of(life.get().number()) : survey.firstUneventful();
    Optional<Story> story =
        number.isPresent() ? Optional.of(stories.tell(number.getAsLong())) : Optional.empty();
    String how =
        story.isPresent()
            ? among(survey, life)
            : String.format(
                Locale.ROOT,
                "Each of the first %,d histories lost footage: none is a near miss.",
                survey.searched());
    return new Told(story, "near-miss", survey.searched(), List.of(how), survey.finished());
  }

  private static String among(Survey survey, Optional<Life> life) {
    String among =
        String.format(
            Locale.ROOT,
            "Of the %,d among the first %,d histories that lost nothing, ",
            survey.searched() - survey.losing(),
            survey.searched());
    if (life.isEmpty()) {
      return among + "none had a mishap or a failure: the first is told.";
    }
    return among
        + (life.get().peril().isPresent()
            ? "it is the one in which a loss was nearest: the fewest further failures away,"
                + " then the soonest that the only copy was struck after all, then the most"
                + " footage in one copy only, times hours."
            : "none left half of the footage or more in one copy only after something failed: the"
                + " one with the most happenings is told.");
  }

  /** Where nothing was asked for: the first loss of a short search, else a near miss. */
  Told any(SearchLimit survey) {
    LossSearch found = stories.firstLoss(SHORT_SEARCH, watch);
    if (found.number().isPresent()) {
      return firstLoss(found);
    }
    if (!found.finished()) {
      return new Told(
          Optional.empty(), "first-loss", found.searched(), List.of(none(found)), false);
    }
    Told near = nearMiss(survey);
    List<String> how = new ArrayList<>(List.of(none(found)));
    how.addAll(near.how());
    return new Told(near.story(), near.selector(), near.searched(), how, near.finished());
  }

  private static Told told(
      String selector, long searched, boolean finished, Story story, List<String> how) {
    return new Told(Optional.of(story), selector, searched, how, finished);
  }
}
