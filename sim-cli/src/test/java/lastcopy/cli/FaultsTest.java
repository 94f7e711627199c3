package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The program in a process of its own on a machine that fails it: the numbers are kept or a clear
 * sentence says why not, no file is half written, and the status is right.
 */
class FaultsTest {

  private static final String[] SHORT = {"--histories", "3000", "--threads", "2"};

  @TempDir Path folder;

  private Path results;
  private String file;

  @BeforeEach
  void copyTheDemo() throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "needs a shell");
    results = Files.createDirectory(folder.resolve("results"));
    Path demo = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");
    file = Files.copy(demo, folder.resolve("demo.yaml")).toString();
  }

  @Test
  void aClosedPipe() throws Exception {
    Jvm.Ended ended = jvm().shell("\"$@\" | head -c 10").run(line("compare", file));
    assertThat(ended.err()).isEmpty();
    assertThat(ended.out()).hasSize(10);
  }

  @ParameterizedTest
  @ValueSource(strings = {"compare", "inspect"})
  void aFullDisk(String command) throws Exception {
    assumeTrue(Files.exists(Path.of("/dev/full")), "needs a full device");
    Jvm.Ended ended = jvm().shell("exec \"$@\" > /dev/full").run(command, file, "--json", "-");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("cannot write to standard output");
  }

  @Test
  void aReadOnlyFolder() throws Exception {
    assumeTrue(Files.isDirectory(Path.of("/proc/self")), "needs a folder that root cannot write");
    Jvm.Ended ended = jvm().run(line("compare", file, "--json", "/proc/self/r.json"));
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).startsWith("lastcopy: ").contains("/proc/").hasLineCount(1);
  }

  @Test
  void noFonts() throws Exception {
    Path none = Files.writeString(folder.resolve("fonts.conf"), "<fontconfig></fontconfig>");
    Jvm.Ended ended =
        jvm()
            .environment("FONTCONFIG_FILE", none.toString())
            .run(line("compare", file, "--charts", results.toString()));
    assertThat(ended.out()).contains("Layout ");
    if (ended.status() != 0) {
      assertThat(ended.status()).isEqualTo(1);
      assertThat(ended.err()).contains("lacks the fonts").hasLineCount(1);
      assertThat(names()).isEmpty();
    }
  }

  @Test
  void noHomeFolderNoTempFolderNoTerminal() throws Exception {
    Jvm.Ended ended =
        jvm()
            .with("-Duser.home=/nonexistent", "-Djava.io.tmpdir=/nonexistent", "-XX:-UsePerfData")
            .environment("HOME", "/nonexistent")
            .environment("TMPDIR", "/nonexistent")
            .environment("TERM", "")
            .shell("exec \"$@\" < /dev/null")
            .run(line("compare", file, "--charts", results.toString()));
    assertThat(ended.err()).startsWith("lastcopy: wrote ").hasLineCount(1);
    assertThat(ended.status()).isZero();
    assertThat(names()).hasSize(4);
  }

  /** Where the locale has English letters only, the machine can name no other file. */
  @Test
  void otherLettersInNamesAndPaths() throws Exception {
    String text = Files.readString(Path.of(file));
    Path named = folder.resolve("süß İstanbul ışık 映画.yaml");
    Files.writeString(named, text.replaceFirst("studio: .*", "studio: Işık Film 映画"));
    String json = results.resolve("sonuç.json").toString();
    Jvm.Ended plain =
        jvm()
            .environment("LC_ALL", "C.UTF-8")
            .run(line("compare", named.toString(), "--json", json));
    assertThat(plain.status()).as(plain.err()).isZero();
    assertThat(plain.out()).contains("Işık Film 映画");
    for (String language : List.of("tr", "ar-EG", "hi")) {
      Jvm.Ended other =
          jvm()
              .environment("LC_ALL", "C.UTF-8")
              .with("-Duser.language=" + language.substring(0, 2), "-Duser.country=TR")
              .run(line("compare", named.toString()));
      assertThat(other.out()).isEqualTo(plain.out());
    }
    Jvm.Ended english = jvm().environment("LC_ALL", "C").run(line("compare", file));
    assertThat(english.status()).isZero();
    Jvm.Ended none = jvm().environment("LC_ALL", "C").run(line("compare", named.toString()));
    assertThat(none.status()).isIn(0, 2);
    if (none.status() == 2) {
      assertThat(none.err()).contains("C.UTF-8");
    }
  }

  @Test
  void littleMemory() throws Exception {
    Jvm.Ended ended =
        jvm().with("-Xmx64m").run(line("compare", file, "--charts", results.toString()));
    assertThat(ended.status()).as(ended.err()).isZero();
    assertThat(names()).hasSize(4);
    Jvm.Ended less = jvm().with("-Xmx4m").run(line("compare", file));
    assertThat(less.status()).isNotZero();
    assertThat(less.err()).doesNotContain("\tat ");
  }

  @Test
  void theSameOnAnotherVersionOfJava() throws Exception {
    Path other = other();
    Jvm.Ended here = jvm().run(line("compare", file, "--json", "-"));
    Jvm.Ended there = jvm().on(other).run(line("compare", file, "--json", "-"));
    assertThat(there.err()).isEqualTo(here.err());
    assertThat(there.out()).isEqualTo(here.out());
    Jvm.Ended alone =
        jvm().run("compare", file, "--json", "-", "--histories", "3000", "--threads", "1");
    assertThat(alone.out()).isEqualTo(here.out());
  }

  private static Path other() throws IOException {
    Path homes = Path.of("/usr/lib/jvm");
    assumeTrue(Files.isDirectory(homes), "needs another Java");
    Path mine = Path.of(System.getProperty("java.home")).toRealPath();
    try (Stream<Path> all = Files.list(homes)) {
      var found =
          all.filter(home -> Files.isExecutable(home.resolve("bin/java")))
              .filter(home -> !real(home).equals(mine))
              .max(Comparator.naturalOrder());
      assumeTrue(found.isPresent(), "needs another Java");
      return found.orElseThrow();
    }
  }

  private static Path real(Path home) {
    try {
      return home.toRealPath();
    } catch (IOException e) {
      return home;
    }
  }

  @Test
  void interruptedAtAnyInstant() throws Exception {
    interrupted(4, 1);
  }

  @Test
  @Tag("slow")
  void interruptedAtFiftyInstants() throws Exception {
    interrupted(50, 2);
  }

  /** Red if whoever waits for an answer lets nobody end it, or leaves a part of a file. */
  @ParameterizedTest
  @ValueSource(strings = {"INT", "TERM"})
  void interruptedWhileAsking(String signal) throws Exception {
    assumeTrue(signal.equals("TERM") || Jvm.heedsInterrupts(), "interrupts are ignored here");
    Jvm jvm = jvm();
    Process process = jvm.start("ask", "--write", results.resolve("asked.yaml").toString());
    for (int i = 0; i < 600 && !Files.readString(folder.resolve("out")).contains("] > "); i++) {
      Thread.sleep(100);
    }
    Thread.sleep(100);
    long began = System.nanoTime();
    new ProcessBuilder("kill", "-" + signal, Long.toString(process.pid())).start().waitFor();
    assertThat(jvm.ended(process).status()).isEqualTo(130);
    assertThat(System.nanoTime() - began).isLessThan(30_000_000_000L);
    assertThat(names()).isEmpty();
  }

  private void interrupted(int times, long seed) throws Exception {
    SplittableRandom luck = new SplittableRandom(seed);
    int kept = 0;
    for (int i = 0; i < times; i++) {
      String signal = luck.nextBoolean() && Jvm.heedsInterrupts() ? "INT" : "TERM";
      long after = luck.nextLong(200, 5_000);
      String json = results.resolve("r" + i + ".json").toString();
      Jvm jvm = jvm();
      Process process =
          jvm.start(
              "compare",
              file,
              "--precision",
              "0.01%",
              "--json",
              json,
              "--charts",
              results.toString());
      Thread.sleep(after);
      new ProcessBuilder("kill", "-" + signal, Long.toString(process.pid())).start().waitFor();
      Jvm.Ended ended = jvm.ended(process);
      String when = signal + " after " + after + " ms: " + ended;
      // Before the program itself runs, the machine ends it in its own way.
      assertThat(ended.status()).as(when).isIn(130, 143);
      if (ended.out().isEmpty()) {
        assertThat(Path.of(json)).as(when).doesNotExist();
        continue;
      }
      kept++;
      assertThat(ended.status()).as(when).isEqualTo(130);
      assertThat(ended.out()).as(when).contains("UNFINISHED");
      JsonNode result = new ObjectMapper().readTree(Path.of(json).toFile());
      assertThat(result.get("finished").booleanValue()).as(when).isFalse();
      assertThat(ImageIO.read(results.resolve("loss-curve.png").toFile())).as(when).isNotNull();
      assertThat(results.resolve("loss-curve.svg"))
          .content()
          .endsWith("</svg>")
          .contains("UNFINISHED");
    }
    assertThat(names()).noneMatch(name -> name.endsWith(".tmp"));
    assertThat(kept).isPositive();
  }

  private Jvm jvm() {
    return new Jvm(folder);
  }

  private static String[] line(String... args) {
    return Stream.concat(Stream.of(args), Stream.of(SHORT)).toArray(String[]::new);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(results)) {
      return files.map(path -> path.getFileName().toString()).toList();
    }
  }
}
