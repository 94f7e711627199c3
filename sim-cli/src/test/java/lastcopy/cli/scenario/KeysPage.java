package lastcopy.cli.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import lastcopy.cli.scenario.value.Chance;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.UnitTable;

/** Writes the reference of all keys: sections and order from {@link Kind}, words of the schema. */
final class KeysPage {

  /** Values that many keys share, with the units that they may have. */
  private static final Map<String, UnitTable> VALUES = new LinkedHashMap<>();

  static {
    VALUES.put("size", UnitTable.SIZE);
    VALUES.put("time", UnitTable.TIME);
    VALUES.put("link_rate", UnitTable.LINK);
    VALUES.put("chance", Chance.UNITS);
  }

  private final JsonNode schema;
  private final StringBuilder page = new StringBuilder();

  private KeysPage(JsonNode schema) {
    this.schema = schema;
  }

  static String make() throws IOException {
    return new KeysPage(new ObjectMapper().readTree(ScenarioSchema.text())).write();
  }

  private String write() {
    line("# Every key of a scenario file");
    line("");
    line("Made from the table that the reader uses; `lastcopy inspect --keys` prints this page,");
    line(
        "`lastcopy inspect --template` a file to start from, `lastcopy inspect FILE` the defaults");
    line("that a file used. A key in bold must be there.");
    values();
    for (Kind kind : Kind.values()) {
      section(kind);
    }
    return page.toString();
  }

  private void values() {
    line("");
    line("## Values");
    line("");
    line("| value | units | for example |");
    line("|---|---|---|");
    VALUES.forEach(
        (name, units) ->
            line(
                "| %s | %s | %s |",
                word(name),
                units.factors().keySet().stream()
                    .map(u -> code(u))
                    .collect(Collectors.joining(", ")),
                examples(definition(name))));
    for (String name : List.of("share", "law", "life", "looks")) {
      String meaning = definition(name).path("description").asText("");
      String kind = meaning.isEmpty() ? "a number, or a number with %" : meaning;
      line("| %s | %s | %s |", word(name), kind, examples(definition(name)));
    }
    line(
        "| range | two ends of a chance, a rate, a mean or a factor that is not known: its 5th and"
            + " 95th percentile | `1..4 %%/year`, `{mean: 20000..80000 h}`, `{times: 0.5..2.5, law:"
            + " {typical: hard-disk}}` |",
        "");
  }

  private void section(Kind kind) {
    JsonNode section = section(schema, kind);
    line("");
    line("## %s", kind.phrase());
    String meaning = definitionOf(kind).path("description").asText("");
    if (!meaning.isEmpty()) {
      line("");
      String end = meaning.endsWith(".") ? "" : ".";
      line("%s", meaning.substring(0, 1).toUpperCase(Locale.ROOT) + meaning.substring(1) + end);
    }
    line("");
    line("| key | meaning | value |");
    line("|---|---|---|");
    List<String> required = texts(section.path("required"));
    for (String key : kind.keys()) {
      JsonNode property = withoutChoice(section.path("properties").path(key));
      String name = required.contains(key) ? "**" + code(key) + "**" : code(key);
      line("| %s | %s | %s |", name, meaning(property), value(property));
    }
    if (section.has("oneOf")) {
      line("");
      line("Exactly one of %s must be there.", alternatives(section));
    }
  }

  /** Any value below a layout may be a choice, which is said once. */
  private static JsonNode withoutChoice(JsonNode property) {
    JsonNode ways = property.path("anyOf");
    boolean isOpen = ways.size() == 2 && reference(ways.get(1)).equals("choice");
    if (!isOpen) {
      return property;
    }
    ObjectNode only = ways.get(0).deepCopy();
    if (property.has("description")) {
      only.set("description", property.get("description"));
    }
    return only;
  }

  private JsonNode section(JsonNode root, Kind kind) {
    return switch (kind) {
      case SCENARIO -> root;
      case LAW, LIFE, LOOKS -> definition(word(kind) + "_form");
      default -> definition(word(kind));
    };
  }

  private JsonNode definitionOf(Kind kind) {
    return kind == Kind.SCENARIO ? schema : definition(word(kind));
  }

  private static String alternatives(JsonNode section) {
    return StreamSupport.stream(section.path("oneOf").spliterator(), false)
        .flatMap(choice -> texts(choice.path("required")).stream())
        .map(key -> code(key))
        .collect(Collectors.joining(" and "));
  }

  private String meaning(JsonNode property) {
    String own = property.path("description").asText("");
    return own.isEmpty() ? definition(reference(property)).path("description").asText("") : own;
  }

  /** The words of a value: its choices, its section, or its kind with examples. */
  private String value(JsonNode property) {
    if (property.has("const")) {
      return code(property.get("const").asText());
    }
    if (property.has("enum")) {
      return texts(property.get("enum")).stream()
          .map(w -> code(w))
          .collect(Collectors.joining(", "));
    }
    if (property.has("examples")) {
      return examples(property);
    }
    String reference = reference(property);
    if (!reference.isEmpty()) {
      return valueOf(reference);
    }
    if (property.has("anyOf")) {
      List<String> ways = new ArrayList<>();
      property.get("anyOf").forEach(way -> ways.add(value(way)));
      return String.join(", or ", ways);
    }
    JsonNode named = property.path("additionalProperties");
    if (named.isObject()) {
      return "names of your own, each " + value(withoutChoice(named)).replace(", or nothing", "");
    }
    JsonNode items = property.path("items");
    if (items.isObject()) {
      return "a list of: " + value(items);
    }
    String type = property.path("type").isArray() ? "string" : property.path("type").asText();
    return switch (type) {
      case "string" -> "a text";
      case "boolean" -> "`true` or `false`";
      case "null" -> "nothing";
      default -> "a number";
    };
  }

  private String valueOf(String reference) {
    for (Kind kind : Kind.values()) {
      if (word(kind).equals(reference)) {
        String anchor = kind.phrase().replace(' ', '-');
        return "[" + kind.phrase() + "](#" + anchor + ")";
      }
    }
    String example = examples(definition(reference));
    String first = example.isEmpty() ? "" : ": " + example.replaceFirst("`, .*", "`");
    return "a " + word(reference) + first;
  }

  private static String reference(JsonNode property) {
    return property.path("$ref").asText("").replaceFirst(".*/", "");
  }

  private static String examples(JsonNode type) {
    return StreamSupport.stream(type.path("examples").spliterator(), false)
        .map(example -> code(plain(example)))
        .collect(Collectors.joining(", "));
  }

  /** As YAML in one line. */
  private static String plain(JsonNode example) {
    if (example.isArray()) {
      return "[" + String.join(", ", texts(example)) + "]";
    }
    if (!example.isObject()) {
      return example.isNumber() && example.asDouble() < 1e-3
          ? String.format(Locale.ROOT, "%.0e", example.asDouble()).replace("e-0", "e-")
          : example.asText();
    }
    List<String> entries = new ArrayList<>();
    example.properties().forEach(e -> entries.add(e.getKey() + ": " + plain(e.getValue())));
    return "{" + String.join(", ", entries) + "}";
  }

  private static String code(String text) {
    return "`" + text + "`";
  }

  private static String word(Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  private static String word(String definition) {
    return definition.equals("link_rate") ? "rate of data" : definition.replace('_', ' ');
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(text -> texts.add(text.asText()));
    return texts;
  }

  private JsonNode definition(String name) {
    return schema.path("$defs").path(name);
  }

  private void line(String format, Object... values) {
    page.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values))
        .append('\n');
  }
}
