package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The figures that a page shows in a browser, held against those of the JSON of the same run: each
 * to the last digit that is shown.
 */
final class PageFigures {

  /** Up to here a whole number shows every digit; above, three significant ones may. */
  private static final double SIGNIFICANT = 0.5e-2;

  private static final Pattern STUDIOS = Pattern.compile("(at most )?(\\S+) of ([0-9,]+)");
  private static final Pattern RANGE = Pattern.compile("\\((\\S+) to (\\S+)\\)");
  private static final Pattern PERCENT = Pattern.compile("(.*): ([0-9]+) %");
  private static final Pattern MONEY = Pattern.compile("\\S+ (\\S+)(?: \\((\\S+) to (\\S+)\\))?.*");
  private static final Pattern SPAN = Pattern.compile("(\\S+) (minute|hour|day|month|year)s?");

  private final Browser browser;
  private final JsonNode layouts;

  PageFigures(Browser browser, JsonNode result) {
    this.browser = browser;
    layouts = result.get("layouts");
  }

  /** All of them. */
  void areTheResults() {
    List<String> titles = texts("article.card h3");
    assertThat(titles).hasSize(layouts.size());
    for (int i = 0; i < titles.size(); i++) {
      JsonNode layout = layouts.get(i);
      assertThat(titles.get(i)).isEqualTo(layout.get("title").asText());
      card(i, layout);
      causes(i, layout.get("causes"));
      recoveries(i, layout.get("recovery"));
    }
    costs();
  }

  private List<String> texts(String selector) {
    return browser.words(
        "return [...document.querySelectorAll(\""
            + selector
            + "\")].map(e => e.textContent.trim());");
  }

  private void card(int index, JsonNode layout) {
    JsonNode chance = layout.get("any_loss");
    Matcher number = STUDIOS.matcher(texts("article.card .number").get(index));
    assertThat(number.lookingAt()).as(layout.toString()).isTrue();
    double of = value(number.group(3));
    shows(number.group(2), chance.get(number.group(1) == null ? "probability" : "high"), of);
    Matcher range = RANGE.matcher(texts("article.card .number + p").get(index));
    if (range.lookingAt()) {
      shows(range.group(1), chance.get("low"), of);
      shows(range.group(2), chance.get("high"), of);
    } else {
      assertThat(number.group(1)).as("a number without a range").isNotNull();
    }
    // As many squares as the number beside them.
    double filled = Math.rint(chance.get("probability").asDouble() * of);
    String pictured =
        browser
            .words(
                "return [...document.querySelectorAll('article.card > svg')]"
                    + ".map(e => e.getAttribute('aria-label'));")
            .get(index);
    assertThat(pictured).endsWith(String.format(" squares, %.0f filled", filled));
  }

  private void causes(int index, JsonNode causes) {
    List<String> items = new ArrayList<>();
    for (String item : texts(at(index, ".causes li"))) {
      Matcher cause = PERCENT.matcher(item);
      if (cause.matches()) {
        JsonNode found = causes.get(items.size());
        assertThat(cause.group(1)).isEqualTo(found.get("cause").asText());
        shows(cause.group(2), found.get("share"), 100);
        items.add(item);
      }
    }
    assertThat(items).hasSize(Math.min(4, causes.size()));
  }

  private void recoveries(int index, JsonNode recoveries) {
    String rows = "section.stops .two > :nth-child(" + (index + 1) + ") tbody tr";
    List<String> heads = texts(rows + " th");
    List<String> cells = texts(rows + " td");
    assertThat(heads).hasSize(Math.min(3, recoveries.size()));
    for (int i = 0; i < heads.size(); i++) {
      JsonNode recovery = recoveries.get(i);
      assertThat(heads.get(i)).isEqualTo(recovery.get("sentence").asText());
      takes(cells.get(2 * i), recovery.at("/work_hours/mean").asDouble());
      takes(cells.get(2 * i + 1), recovery.at("/whole_hours/mean").asDouble(Double.NaN));
    }
  }

  private static void takes(String words, double hours) {
    Matcher span = SPAN.matcher(words);
    if (span.matches()) {
      double unit =
          switch (span.group(2)) {
            case "minute" -> 1 / 60.0;
            case "hour" -> 1;
            case "day" -> 24;
            case "month" -> 730.5;
            default -> 8_766;
          };
      shows(span.group(1), hours / unit);
    } else if (words.equals("nothing to copy")) {
      assertThat(hours).isNaN();
    } else {
      assertThat(words).isIn("at once", "under a minute");
      assertThat(hours).isLessThan(0.5 / 60);
    }
  }

  /** The cheapest first. */
  private void costs() {
    List<JsonNode> priced = new ArrayList<>();
    layouts.forEach(layout -> priced.add(layout));
    priced.removeIf(layout -> !layout.has("cost"));
    priced.sort((a, b) -> Double.compare(total(a), total(b)));
    List<String> titles = texts("section.costs tbody th");
    List<String> cells = texts("section.costs tbody td");
    assertThat(titles).hasSameSizeAs(priced);
    for (int i = 0; i < titles.size(); i++) {
      JsonNode layout = priced.get(i);
      assertThat(titles.get(i)).isEqualTo(layout.get("title").asText());
      Matcher money = MONEY.matcher(cells.get(3 * i));
      assertThat(money.matches()).as(cells.get(3 * i)).isTrue();
      shows(money.group(1), total(layout));
      if (money.group(2) != null) {
        shows(money.group(2), layout.at("/cost/low"), 1);
        shows(money.group(3), layout.at("/cost/high"), 1);
      }
    }
  }

  private static double total(JsonNode layout) {
    return layout.at("/cost/total").asDouble();
  }

  private static String at(int index, String rest) {
    return "section.why .cards > :nth-child(" + (index + 1) + ") " + rest;
  }

  private static void shows(String shown, JsonNode exact, double factor) {
    shows(shown, exact.asDouble() * factor);
  }

  private static void shows(String shown, double exact) {
    int point = shown.indexOf('.');
    double digit = point < 0 ? 1 : Math.pow(10, point + 1 - shown.length());
    double slack = Math.max(digit / 2, point < 0 ? 0 : SIGNIFICANT * exact) * (1 + 1e-9);
    assertThat(Math.abs(value(shown) - exact))
        .as(shown + " for " + exact)
        .isLessThanOrEqualTo(slack);
  }

  private static double value(String shown) {
    return Double.parseDouble(shown.replace(",", ""));
  }
}
