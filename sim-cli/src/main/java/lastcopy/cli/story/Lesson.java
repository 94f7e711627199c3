package lastcopy.cli.story;

import java.util.Optional;
import lastcopy.experiment.Progress;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.story.SearchLimit;
import lastcopy.story.Stories;
import lastcopy.story.Survey;
import lastcopy.story.UnlikelyLosses;

/**
 * What a page for teaching shows.
 *
 * @param draw the studios that a class draws
 * @param chance of any loss
 * @param typical a typical life
 * @param near a near miss
 * @param loss the first loss; without a story if there is none
 */
record Lesson(
    Studio studio,
    Layout layout,
    ClassDraw draw,
    Estimate chance,
    Told typical,
    Told near,
    Told loss) {

  private static final double CONFIDENCE = 0.95;

  /** The same, of a scenario some rates of which are not known. */
  Lesson inTheMiddle() {
    return new Lesson(
        studio,
        layout,
        draw,
        chance,
        typical.inTheMiddle(),
        near.inTheMiddle(),
        loss.inTheMiddle());
  }

  /**
   * Finds it.
   *
   * @param stories of the layout
   * @param unlikely losses of it
   * @param watch asked whether to give up
   */
  record Search(Stories stories, UnlikelyLosses unlikely, Progress watch) {

    /** Fewer than these tell too little of a chance. */
    private static final int FEW = 20;

    /** Empty if it was given up. */
    Optional<Lesson> find(Studio studio, Layout layout, SearchLimit search, SearchLimit survey) {
      StoryChoice choice = new StoryChoice(stories, unlikely, watch);
      Survey first = stories.survey(SearchLimit.histories(ClassDraw.STUDIOS), watch);
      Told typical = choice.typical(survey);
      Told near = choice.nearMiss(survey);
      Told loss = choice.firstLoss(search);
      Estimate chance = chance(first, stories.survey(survey, watch));
      return watch.cancelled() || !first.finished()
          ? Optional.empty()
          : Optional.of(
              new Lesson(studio, layout, ClassDraw.of(first), chance, typical, near, loss));
    }

    /** Of plain histories where these lose often enough, else of biased ones. */
    private Estimate chance(Survey first, Survey survey) {
      Survey most = survey.searched() > first.searched() ? survey : first;
      return most.losing() >= FEW || watch.cancelled()
          ? Proportions.of(most.losing(), Math.max(1, most.searched()), CONFIDENCE)
          : unlikely.chance(CONFIDENCE, watch).anyLoss();
    }
  }
}
