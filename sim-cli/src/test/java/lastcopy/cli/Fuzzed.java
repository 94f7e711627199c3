package lastcopy.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.worlds.WorldSimulation;

/** Puts one text through every command in this process and says what is wrong with what comes. */
final class Fuzzed {

  /** Nanoseconds of processor time; a quick machine has 5 s, which a slow one takes to warm up. */
  private static final long LONGEST = 20_000_000_000L;

  private static final int RARELY = 40;

  private static final int SELDOM = 10;

  private static final Pattern PLACE =
      Pattern.compile("(lastcopy: )?fuzzed\\.yaml:[1-9]\\d*:[1-9]\\d*: found .+; accepted: .+");

  private static final Pattern MORE = Pattern.compile("\\.\\.\\. and [0-9,]+ more like these");

  /** Words of the machine, which no user should meet. */
  private static final Pattern MACHINE =
      Pattern.compile("Exception|(java|org|lastcopy)\\.[a-z]+\\.|\\$[A-Z]|failed unexpectedly");

  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity|null)\\b|∞");

  private static final Pattern HIDDEN =
      Pattern.compile("[\\p{Cc}\\p{Cs}\u202a-\u202e\u2066-\u2069&&[^\\n]]");

  private static final ObjectMapper JSON = new ObjectMapper();

  private final Path folder;
  private final List<String> wrong = new ArrayList<>();
  private int valid;
  private ScenarioLoading.Loaded loaded;
  private int refused;

  Fuzzed(Path folder) {
    this.folder = folder;
  }

  /** How many texts were valid so far. */
  int valid() {
    return valid;
  }

  /** What is wrong; empty if nothing is. */
  List<String> problems(String text) throws IOException {
    wrong.clear();
    loaded = null;
    long began = cpu();
    Path file = Files.write(folder.resolve("fuzzed.yaml"), text.getBytes(StandardCharsets.UTF_8));
    try {
      loaded(file);
      valid++;
      commands(text, file);
    } catch (WrongScenarioException e) {
      refused++;
      messages(e.getMessage(), text);
      if (refused % SELDOM == 0) {
        Run read = run(text, "inspect", file.toString());
        messages(read.err, text);
        held(read.status == ExitStatus.SCENARIO, "status " + read.status);
      }
    } catch (RuntimeException | Error e) {
      wrong.add("reading threw " + e);
    }
    long took = cpu() - began;
    held(took <= LONGEST, "took " + took / 1_000_000 + " ms");
    return wrong;
  }

  private void commands(String text, Path file) throws IOException, WrongScenarioException {
    withJson(text, "inspect", file.toString());
    String first = loaded(file).studio().layouts().get(0).id();
    done(run(text, "story", file.toString(), "--layout", first, "--history", "3"), text);
    // Biased histories are tuned first, which takes longer than all the rest.
    String method = valid % RARELY == 0 ? "auto" : "plain";
    String how = " --histories 12 --time 500ms --threads 1 --method " + method;
    withJson(text, ("compare " + file + how).split(" ", -1));
    if (valid % RARELY == 1) {
      withJson(text, ("levers " + file + " --layout " + first + how).split(" ", -1));
      withJson(
          text,
          ("advise " + file + " --target 5% --histories 12 --time 500ms --threads 1")
              .split(" ", -1));
    }
  }

  /** Both as text and as JSON, of one run; now and then by the way that prints JSON alone. */
  private void withJson(String text, String... line) throws IOException {
    boolean alone = valid % SELDOM == 0;
    Path json = folder.resolve(line[0] + ".json");
    String[] with = Arrays.copyOf(line, line.length + 2);
    with[line.length] = "--json";
    with[line.length + 1] = alone ? "-" : json.toString();
    Run ran = run(text, with);
    boolean none = ran.err.contains("not one history of each layout");
    // JSON says null where there is no number.
    if (!none && done(ran, alone ? "null" : text)) {
      json(alone ? ran.out : Files.readString(json));
    }
  }

  private void held(boolean holds, String otherwise) {
    if (!holds) {
      wrong.add(otherwise);
    }
  }

  /** The text is read once for all commands. */
  private ScenarioLoading.Loaded loaded(Path file) throws WrongScenarioException, IOException {
    if (loaded == null) {
      loaded = ScenarioLoading.fromFile(file);
    }
    return loaded;
  }

  private record Run(int status, String out, String err) {}

  private Run run(String text, String... line) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Host host =
        new Host(
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(err, false, StandardCharsets.UTF_8),
            false,
            this::loaded,
            WorldSimulation::run,
            () -> LocalDate.of(2026, 1, 1),
            new Interruption());
    int status = -1;
    try {
      status = new Program(host).run(line);
    } catch (RuntimeException | Error e) {
      wrong.add(line[0] + " threw " + e);
    }
    Run run =
        new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    String said = run.err.replace(folder.toString() + "/", "");
    seen(said, text);
    held(!HIDDEN.matcher(run.out).find(), line[0] + " prints what cannot be seen");
    return new Run(run.status, run.out, said);
  }

  private void seen(String said, String text) {
    boolean machine = MACHINE.matcher(said).find() && !MACHINE.matcher(text).find();
    held(!machine, "says " + said.strip());
    held(!HIDDEN.matcher(said).find(), "prints what cannot be seen");
  }

  private void messages(String err, String text) {
    String said = err.replace(folder.toString() + "/", "");
    seen(said, text);
    List<String> lines = said.lines().toList();
    if (lines.isEmpty() || lines.size() > 51) {
      wrong.add(lines.size() + " lines of problems");
    }
    for (String line : lines) {
      if (!PLACE.matcher(line).matches() && !MORE.matcher(line).matches()) {
        wrong.add("no place or no remedy: " + line);
      }
      if (line.contains("do not fit together")) {
        wrong.add("told in the engine's words: " + line);
      }
    }
  }

  private boolean done(Run run, String text) {
    if (run.status != ExitStatus.DONE) {
      wrong.add("status " + run.status + ": " + run.err.strip());
      return false;
    }
    if (NO_NUMBER.matcher(run.out).find() && !NO_NUMBER.matcher(text).find()) {
      String line = run.out.lines().filter(l -> NO_NUMBER.matcher(l).find()).findFirst().get();
      wrong.add("no number: " + line);
    }
    return true;
  }

  private void json(String text) {
    try {
      figures("", JSON.readTree(text));
    } catch (IOException e) {
      wrong.add("no JSON: " + e.getMessage());
    }
  }

  /** Every number is in the range that its name says, with its interval around it. */
  private void figures(String path, JsonNode node) {
    if (node.isObject()) {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        figures(path + "." + field.getKey(), field.getValue());
      }
      for (String name : List.of("probability", "mean", "share")) {
        around(path, node, name);
      }
    } else if (node.isArray()) {
      node.forEach(item -> figures(path + "[]", item));
    } else if (node.isNumber()) {
      range(path, node.doubleValue());
    }
  }

  private void around(String path, JsonNode node, String name) {
    if (node.has(name) && node.has("low") && node.get("high").isNumber()) {
      double value = node.get(name).doubleValue();
      boolean holds =
          node.get("low").doubleValue() <= value && value <= node.get("high").doubleValue();
      if (!holds) {
        wrong.add(path + ": " + node);
      }
      if (name.equals("probability") && !(node.get("high").doubleValue() <= 1)) {
        wrong.add(path + ": " + node);
      }
    }
  }

  private void range(String path, double value) {
    String name = path.substring(path.lastIndexOf('.') + 1);
    boolean signed = path.contains("difference") || name.equals("seed");
    boolean share = name.equals("probability") || name.startsWith("share");
    boolean days = name.contains("days_per_year");
    double most = share ? 1 + 1e-9 : days ? 365 : Double.MAX_VALUE;
    if (!signed && !(value >= 0 && value <= most)) {
      wrong.add(String.format(Locale.ROOT, "%s: %s is out of range", path, value));
    }
  }

  private static long cpu() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
