package lastcopy.cli.ask;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.ask.CopySketch.By;
import lastcopy.cli.ask.CopySketch.Form;
import lastcopy.cli.ask.CopySketch.Way;
import lastcopy.scenario.Units;

/**
 * Today's layout, and two or three that are a step from it: a mirror if there is none, a copy in
 * another place, a service, both; and a daily look with a spare drive where few other steps are
 * left.
 */
final class Steps {

  private static final int MOST = 3;
  private static final int LEAST = 2;

  /** A line that new footage fills for longer is no way to send it (a guess). */
  private static final double MOST_OF_THE_LINE = 0.5;

  private static final Way NIGHTLY = new Way("1 day", By.LINE);
  private static final Way WEEKLY = new Way("7 days", By.HAND);

  private final Answers answers;
  private final LayoutSketch today;
  private final List<LayoutSketch> steps = new ArrayList<>();

  private Steps(Answers answers) {
    this.answers = answers;
    this.today = today(answers);
  }

  /** Today's first. */
  static List<LayoutSketch> of(Answers answers) {
    Steps plans = new Steps(answers);
    plans.find();
    List<LayoutSketch> all = new ArrayList<>(List.of(plans.today));
    all.addAll(plans.steps.subList(0, Math.min(MOST, plans.steps.size())));
    return List.copyOf(all);
  }

  private void find() {
    boolean single = answers.is("main", QuestionTable.DRIVES);
    boolean away = answers.is("second", QuestionTable.AWAY);
    boolean service = answers.is("second", QuestionTable.SERVICE);
    Optional<LayoutSketch> mirror = single ? Optional.of(mirror()) : Optional.empty();
    mirror.ifPresent(steps::add);
    if (!away) {
      steps.add(today.and("far-drive", "Today's, and " + farDrives(), far()));
    }
    if (!service) {
      steps.add(today.and("service", "Today's, and a paid service", CopySketch.service(nightly())));
    }
    if (!away && !service) {
      steps.add(
          today.and(
              "far-drive-and-service",
              "Today's, " + farDrives() + ", and a paid service",
              far(),
              CopySketch.service(nightly())));
    } else {
      CopySketch more = away ? CopySketch.service(nightly()) : far();
      mirror.ifPresent(m -> steps.add(m.and("mirror-and-" + more.id(), both(more), more)));
    }
    if (steps.size() < LEAST) {
      steps.add(today.watched("watched", "Today's, looked at every day, with a spare drive"));
    }
  }

  private String farDrives() {
    return (holding(answers) == 1 ? "a drive " : "drives ") + in(farPlace());
  }

  private String both(CopySketch more) {
    return "A mirror in one box, and "
        + (more.form() == Form.SERVICE ? "a paid service" : farDrives());
  }

  private LayoutSketch mirror() {
    int holding = Math.max(today.main().models().size(), RoomNeeded.drives(answers));
    return today.working("mirror", "Each drive twice, in one box", today.main().mirrored(holding));
  }

  /** As many as hold everything, however it is kept today. */
  private CopySketch far() {
    Way way = fitsTheLine() ? NIGHTLY : WEEKLY;
    return CopySketch.row("far", farPlace(), CopySketch.NEW, holding(answers), Optional.of(way));
  }

  private static Way nightly() {
    return NIGHTLY;
  }

  private boolean fitsTheLine() {
    double perSecond = RoomNeeded.yearly(answers) / (Units.HOURS_PER_YEAR * Units.SECONDS_PER_HOUR);
    return perSecond < MOST_OF_THE_LINE * answers.link("uplink");
  }

  private String farPlace() {
    return farPlace(answers);
  }

  private static String farPlace(Answers answers) {
    return answers.is("place", QuestionTable.HOME) ? "friend" : QuestionTable.HOME;
  }

  private static int holding(Answers answers) {
    return Math.max(
        RoomNeeded.holding(answers, answers.whole("drives")), RoomNeeded.drives(answers));
  }

  private static LayoutSketch today(Answers answers) {
    CopySketch main = main(answers);
    String title = title(main);
    List<CopySketch> copies = new ArrayList<>(List.of(main));
    String second = answers.text("second");
    if (!second.equals(QuestionTable.NONE)) {
      copies.add(second(answers, second));
      title += second(second, answers);
    }
    return new LayoutSketch("today", "Today: " + title, copies, false);
  }

  private static CopySketch main(Answers answers) {
    int drives = answers.whole("drives");
    Form form =
        switch (answers.text("main")) {
          case QuestionTable.MIRROR -> drives == 2 ? Form.MIRROR : Form.PAIRS;
          case QuestionTable.PARITY -> Form.PARITY;
          // One that will be full is followed by another.
          default -> drives == 1 && RoomNeeded.drives(answers) == 1 ? Form.SINGLE : Form.SHELF;
        };
    List<String> models = Collections.nCopies(drives, CopySketch.OWNED);
    return new CopySketch("main", answers.text("place"), form, models, Optional.empty());
  }

  private static String title(CopySketch main) {
    int drives = main.models().size();
    return switch (main.form()) {
      case SINGLE -> "one drive";
      case SHELF -> drives == 1 ? "one drive after the other" : drives + " drives";
      case MIRROR -> "two drives that hold the same";
      case PAIRS -> drives + " drives in pairs";
      default -> drives + " drives, one may fail";
    };
  }

  private static CopySketch second(Answers answers, String second) {
    String every = answers.text("every");
    if (second.equals(QuestionTable.SERVICE)) {
      return CopySketch.service(new Way(every, By.LINE));
    }
    boolean beside = second.equals(QuestionTable.BESIDE);
    String place = beside ? answers.text("place") : farPlace(answers);
    Way way = new Way(every, beside ? By.CABLE : By.HAND);
    String id = beside ? "beside" : "far";
    return CopySketch.row(id, place, CopySketch.OWNED, holding(answers), Optional.of(way));
  }

  private static String second(String second, Answers answers) {
    return switch (second) {
      case QuestionTable.BESIDE -> ", the same beside it";
      case QuestionTable.AWAY -> ", the same " + in(farPlace(answers));
      default -> ", and a paid service";
    };
  }

  /** Where a place is, in words. */
  static String in(String place) {
    return switch (place) {
      case QuestionTable.HOME -> "at home";
      case "friend" -> "at a friend's";
      default -> "in the " + place;
    };
  }
}
