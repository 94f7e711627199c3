package lastcopy.cli.fit;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.cli.scenario.yaml.Problem;
import lastcopy.fit.LifeRecord;
import lastcopy.fit.Records;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a CSV of drive records whole: all mistakes are told together, and nothing is guessed. */
final class RecordsFile {

  /** More groups than this are no comparison, but a column of another meaning. */
  private static final int MOST_GROUPS = 50;

  private static final long MOST_BYTES = 100_000_000;

  /**
   * Records that were read.
   *
   * @param all every record
   * @param groups by name, in the file's order; empty if the file tells no groups apart
   */
  record Read(Records all, Map<String, Records> groups) {}

  private final AgeUnit unit;
  private final LocalDate today;
  private final Mistakes mistakes;
  private final String text;
  private final List<LifeRecord> lives = new ArrayList<>();
  private final Map<String, List<LifeRecord>> groups = new LinkedHashMap<>();

  private RecordsFile(String name, String text, AgeUnit unit, LocalDate today) {
    this.unit = unit;
    this.today = today;
    this.text = text;
    this.mistakes = new Mistakes(name, text);
  }

  /**
   * Reads a file.
   *
   * @param unit of ages in the file and in what is read
   * @param today no record ends later
   * @throws WrongScenarioException if anything in it is wrong
   * @throws IOException if it cannot be read
   */
  static Read of(Path file, AgeUnit unit, LocalDate today)
      throws WrongScenarioException, IOException {
    RecordsFile reading = new RecordsFile(file.toString(), text(file), unit, today);
    reading.read();
    if (!reading.mistakes.none()) {
      throw new WrongScenarioException(reading.told());
    }
    Map<String, Records> groups = new LinkedHashMap<>();
    reading.groups.forEach((name, lives) -> groups.put(name, new Records(lives)));
    return new Read(new Records(reading.lives), groups);
  }

  private static String text(Path file) throws WrongScenarioException, IOException {
    if (Files.size(file) > MOST_BYTES) {
      throw wrong(file, Files.size(file) + " bytes", "at most " + MOST_BYTES);
    }
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
              .toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw wrong(file, "letters that are not UTF-8", "a CSV file in UTF-8");
    }
  }

  private static WrongScenarioException wrong(Path file, String found, String accepted) {
    return new WrongScenarioException(
        List.of(new Problem(file.toString(), 1, 1, found, accepted, "").toString()));
  }

  private void read() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
    try (CSVParser lines = CSVParser.parse(new StringReader(text), format)) {
      Columns columns = null;
      for (CSVRecord line : lines) {
        mistakes.at(line.getCharacterPosition());
        List<String> cells = line.toList();
        if (columns == null) {
          columns = header(cells);
          if (!mistakes.none()) {
            return;
          }
        } else {
          line(cells, columns);
        }
      }
      if (lives.isEmpty() && mistakes.none()) {
        mistakes.note(0, "no records", "a header and a line for each drive", "");
      }
    } catch (UncheckedIOException | IllegalStateException e) {
      mistakes.note(0, "what is no CSV from here on", "cells parted by commas, quotes closed", "");
    }
  }

  private Columns header(List<String> cells) {
    if (cells.size() == 1 && cells.get(0).matches(".*[;\t].*")) {
      mistakes.header(0, "cells parted by semicolons or tabs", "cells parted by commas", "");
    }
    return Columns.of(cells, mistakes);
  }

  private void line(List<String> cells, Columns columns) {
    if (cells.size() != columns.at().size()) {
      String found = cells.size() + (cells.size() == 1 ? " cell" : " cells");
      mistakes.note(0, found, columns.at().size() + ", as in the header", "");
      return;
    }
    RecordLine line = new RecordLine(columns, unit, today, mistakes);
    Optional<LifeRecord> life = line.life(cells);
    Optional<String> group = columns.grouped() ? line.group(cells) : Optional.empty();
    life.ifPresent(lives::add);
    if (life.isPresent() && group.isPresent()) {
      if (groups.size() == MOST_GROUPS && !groups.containsKey(group.get())) {
        mistakes.note(
            columns.group(), "one more group '" + group.get() + "'", MOST_GROUPS + " groups", "");
        return;
      }
      groups.computeIfAbsent(group.get(), name -> new ArrayList<>()).add(life.get());
    }
  }

  private List<String> told() {
    List<String> lines = new ArrayList<>();
    mistakes.shown().forEach(problem -> lines.add(problem.toString()));
    if (mistakes.more() > 0) {
      lines.add(String.format(Locale.ROOT, "... and %,d more like these", mistakes.more()));
    }
    return lines;
  }
}
