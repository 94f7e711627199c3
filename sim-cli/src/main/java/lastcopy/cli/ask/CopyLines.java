package lastcopy.cli.ask;

import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.ask.CopySketch.By;
import lastcopy.cli.ask.CopySketch.Form;
import lastcopy.cli.ask.CopySketch.Way;
import lastcopy.scenario.Units;

/** What a file says of a copy. */
final class CopyLines {

  private static final int INDENT = 8;

  private final Answers answers;
  private final CopySketch copy;
  private final boolean watched;
  private final Lines lines;

  private CopyLines(Answers answers, CopySketch copy, boolean watched) {
    this.answers = answers;
    this.copy = copy;
    this.watched = watched;
    this.lines = new Lines(answers, INDENT);
  }

  /**
   * The lines of a copy.
   *
   * @param watched whether somebody looks every day, and another drive lies on the shelf
   */
  static List<String> of(Answers answers, CopySketch copy, boolean watched) {
    CopyLines made = new CopyLines(answers, copy, watched);
    made.lines.plain("place", copy.place());
    if (copy.form() == Form.SERVICE) {
      made.service();
    } else {
      made.drives();
    }
    copy.way().ifPresent(made::fed);
    return made.lines.all();
  }

  private void service() {
    lines
        .assumed("service", "{loses: 0.2 %/year, price: 5 per TB per month}", "its account too")
        .assumed("noticed", "1 day")
        .assumed("wait", "2 days", "until there is a new account");
  }

  private void drives() {
    Form form = copy.form();
    if (form.isBoxed()) {
      lines.plain("box", "box");
    }
    lines.plain("drives", list(copy.models()));
    if (form != Form.SINGLE) {
      lines.plain("arrangement", form.key());
    }
    if (isOneDelivery()) {
      lines.assumed("batch", "{name: " + copy.id() + ", spread: 0.5}", "bought together");
    }
    if (watched && answers.hours("noticed") > Units.HOURS_PER_DAY) {
      lines.assumed("noticed", "1 day", "somebody looks every day");
    } else {
      lines.answer("noticed", answers.text("noticed"), "noticed");
    }
    if (watched) {
      lines.assumed("wait", "0 h", "the spare is put in at once");
    } else {
      lines.answer("wait", answers.text("wait"), "wait");
    }
    if (form.isBoxed()) {
      lines.assumed("strain", "2", "one that fails is soon followed");
    }
    lines.assumed("read_errors", "1e-15", "chance that a bit cannot be read");
  }

  /** Drives that are all there already, and came together. */
  private boolean isOneDelivery() {
    return copy.form().isBoxed()
        && !copy.models().contains(CopySketch.NEW)
        && answers.is("together", QuestionTable.YES);
  }

  private void fed(Way way) {
    boolean hand = way.by() == By.HAND;
    String link = way.by() == By.LINE ? "line" : "100 MB/s";
    String at = way.by() == By.LINE && way.every().equals("1 day") ? ", at: 2 h" : "";
    String feed = "{from: main, every: " + way.every() + at + ", link: " + link + "}";
    // What today has was answered; what a step adds was not.
    boolean asked = answers.has("every") && !copy.models().contains(CopySketch.NEW) && isToday();
    if (asked) {
      lines.answer("feed", feed, "every");
    } else {
      lines.assumed("feed", feed);
    }
    lines.assumed(
        "restores_at",
        copy.form() == Form.SERVICE ? "100 Mbit/s" : "100 MB/s",
        copy.form() == Form.SERVICE ? "the line downwards" : "the drives are brought and copied");
    lines.assumed("keeps_deleted", "30 days", "how long it keeps what was deleted on main");
    spoils();
    if (hand) {
      lines.remark("reach", "offline", "malware cannot reach it where it lies");
    }
  }

  /** Whether this copy is the second one of today. */
  private boolean isToday() {
    return copy.form() != Form.SERVICE || answers.is("second", QuestionTable.SERVICE);
  }

  private void spoils() {
    String tried = answers.text("tried");
    String every = tried.equals(QuestionTable.NEVER) ? "" : ", tried_every: " + tried;
    lines.remark(
        "spoils",
        "{rate: 2 %/year" + every + "}",
        "rate (assumption), tries "
            + (answers.isOwn("tried") ? "(your answer)" : "(as suggested)"));
  }

  /** Such as {@code 2 x drive-today}, or a list where they differ. */
  private static String list(List<String> models) {
    List<String> runs = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= models.size(); i++) {
      if (i == models.size() || !models.get(i).equals(models.get(from))) {
        runs.add((i - from) + " x " + models.get(from));
        from = i;
      }
    }
    return runs.size() == 1 ? runs.get(0) : "[" + String.join(", ", runs) + "]";
  }
}
