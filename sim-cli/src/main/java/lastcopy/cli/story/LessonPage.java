package lastcopy.cli.story;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A page for teaching, which needs nothing but itself; without a script its picture is whole. */
final class LessonPage {

  private LessonPage() {}

  /** All that the template shows; it escapes everything. */
  record View(
      String studio,
      String layout,
      String layoutId,
      String horizon,
      String chance,
      String seen,
      ClassDraw draw,
      String heading,
      List<LifePicture> lives,
      List<String> missing,
      List<String> pointAt,
      List<String> cautions,
      long seed,
      String version) {}

  /**
   * Writes the page.
   *
   * @param version of the program
   * @throws IOException if it cannot be written
   */
  static void write(Lesson lesson, StoryClock clock, long seed, String version, OutputStream out)
      throws IOException {
    try (InputStream in = LessonPage.class.getResourceAsStream("lesson.html");
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
      Mustache.compiler()
          .escapeHTML(true)
          .compile(reader)
          .execute(view(lesson, clock, seed, version), writer);
      writer.flush();
    }
  }

  private static View view(Lesson lesson, StoryClock clock, long seed, String version) {
    List<LifePicture> lives = lives(lesson, clock);
    return new View(
        lesson.studio().name(),
        lesson.layout().title(),
        lesson.layout().id(),
        LessonWords.horizon(lesson.studio().years()),
        LessonWords.chance(lesson.chance(), lesson.studio().years()),
        LessonWords.seen(lesson.draw(), lesson.chance()),
        lesson.draw(),
        LessonWords.heading(lives.size()),
        lives,
        missing(lesson),
        LessonWords.pointAt(lesson.studio(), lesson.layout()),
        LessonWords.cautions(),
        seed,
        version);
  }

  /** Why a life is not there. */
  private static List<String> missing(Lesson lesson) {
    return Stream.of(lesson.near(), lesson.loss())
        .filter(told -> told.story().isEmpty())
        .flatMap(told -> told.how().stream())
        .toList();
  }

  private static List<LifePicture> lives(Lesson lesson, StoryClock clock) {
    List<LifePicture> lives = new ArrayList<>();
    lives.add(LifePicture.of("typical", "A typical life", lesson.typical(), clock));
    if (lesson.near().story().isPresent()) {
      lives.add(LifePicture.of("near", "A near miss", lesson.near(), clock));
    }
    if (lesson.loss().story().isPresent()) {
      String title = lesson.loss().biased() ? "A loss, which is rare" : "The first loss";
      lives.add(LifePicture.of("loss", title, lesson.loss(), clock));
    }
    return lives;
  }
}
