package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import lastcopy.cli.scenario.part.Ingest;
import lastcopy.cli.scenario.value.Chance;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.UnitTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schema says what the reader accepts: its keys, its units, the files that come with it. */
class ScenarioSchemaTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNode SCHEMA = schema();
  private static final JsonSchema VALIDATOR =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(SCHEMA);

  /** A key that is added to the format but not to the schema, or the other way, is red. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void eachSectionHasTheKeysOfTheReader(Kind kind) {
    JsonNode section =
        switch (kind) {
          case SCENARIO -> SCHEMA;
          case LAW, LIFE, LOOKS -> definition(word(kind) + "_form");
          default -> definition(word(kind));
        };
    List<String> keys = new ArrayList<>();
    section.path("properties").fieldNames().forEachRemaining(keys::add);
    assertThat(keys).containsExactlyElementsOf(kind.keys());
    assertThat(section.path("additionalProperties").asBoolean(true)).isFalse();
  }

  @Test
  void quantitiesHaveTheUnitsOfTheReader() {
    units("size", UnitTable.SIZE);
    units("time", UnitTable.TIME);
    units("link_rate", UnitTable.LINK);
    units("chance", Chance.UNITS);
    for (String unit : Ingest.UNITS.factors().keySet()) {
      assertThat("1 " + unit).matches(pattern(definition("footage").at("/properties/ingest")));
    }
  }

  private static void units(String name, UnitTable table) {
    String pattern = pattern(definition(name));
    for (String unit : table.factors().keySet()) {
      assertThat("1.5e3 " + unit).matches(pattern);
    }
    assertThat("1.5").doesNotMatch(pattern);
    assertThat("1 furlong").doesNotMatch(pattern);
  }

  static Stream<Path> scenarios() throws IOException {
    return ScenarioFilesTest.scenarios();
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void everyScenarioThatComesWithTheProgramIsValid(Path file) throws IOException {
    assertThat(problems(Files.readString(file))).isEmpty();
  }

  @Test
  void everyKeyOfTheFormatIsValid() {
    assertThat(problems(EveryKeyTest.FULL)).isEmpty();
  }

  /** What stands below a layout may be a choice, of two or more; what stands elsewhere may not. */
  @Test
  void aChoiceIsValidBelowALayout() {
    String open = Texts.VALID.replaceFirst("place: studio", "place: {one_of: [studio, home]}");
    assertThat(open).isNotEqualTo(Texts.VALID);
    assertThat(problems(open)).isEmpty();
    assertThat(problems(open.replace("[studio, home]", "[studio]"))).isNotEmpty();
    assertThat(problems(open.replace("{one_of", "{oneof"))).isNotEmpty();
    String priced = "[studio, {use: home, costs: {per_year: 12}}]";
    assertThat(problems(open.replace("[studio, home]", priced))).isEmpty();
    assertThat(problems(Texts.VALID.replaceFirst("years: 5", "years: {one_of: [5, 6]}")))
        .isNotEmpty();
  }

  /** What the reader refuses, the editor marks. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          place: studio  | plaice: studio
          96 GB          | 96
          96 GB          | 96 Gb
          1 %/year       | 1 %
          every: 1 day   | every: 1 dya
          every: 7 days  | evry: 7 days
          1 x desk, feed | desk, feed
          years: 5       | years: -5
          lastcopy: 1    | lastcopy: 2
          """)
  void mistakesAreMarked(String right, String wrong) {
    assertThat(problems(Texts.VALID)).isEmpty();
    assertThat(problems(Texts.VALID.replaceFirst(right, wrong))).isNotEmpty();
  }

  private static Set<ValidationMessage> problems(String yaml) {
    Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
    return VALIDATOR.validate(JSON.valueToTree(tree));
  }

  private static String word(Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  private static JsonNode definition(String name) {
    JsonNode found = SCHEMA.path("$defs").path(name);
    assertThat(found.isObject()).as(name).isTrue();
    return found;
  }

  private static String pattern(JsonNode type) {
    return type.path("pattern").asText();
  }

  private static JsonNode schema() {
    try {
      return JSON.readTree(ScenarioSchema.text());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
