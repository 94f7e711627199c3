package lastcopy.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A real browser without a window, and what a test asks of a page in it. */
final class Browser implements AutoCloseable {

  private static final List<Path> BROWSERS =
      Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
          .map(Path::of)
          .toList();

  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  private static final Pattern ASKED =
      Pattern.compile("\"Network\\.requestWillBeSent\".*?\"url\":\"([^\"]*)\"");

  /** A page that reads itself or a picture in itself asks nobody. */
  private static final Pattern OWN = Pattern.compile("(file|data|about|blob):.*");

  /** Page objects of a PDF as this browser writes it, uncompressed. */
  private static final Pattern SHEET = Pattern.compile("/Type\\s*/Page\\b(?!s)");

  private static final double SMALLER = 0.7;

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Why there is none; empty if there is. */
  static Optional<String> missing() {
    if (BROWSERS.stream().noneMatch(Files::isExecutable)) {
      return Optional.of("no Chromium at " + BROWSERS);
    }
    return Files.isExecutable(DRIVER)
        ? Optional.empty()
        : Optional.of("no chromedriver at " + DRIVER);
  }

  static Browser start() {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, java.util.logging.Level.ALL);
    logs.enable(LogType.PERFORMANCE, java.util.logging.Level.ALL);
    ChromeOptions options = new ChromeOptions();
    BROWSERS.stream()
        .filter(Files::isExecutable)
        .findFirst()
        .ifPresent(b -> options.setBinary(b.toString()));
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run");
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(1));
    return new Browser(driver);
  }

  /** Opens a page on a screen. */
  void open(Path page, int width, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", width < 600));
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    driver.get(page.toUri().toString());
  }

  /** What a page begins with on a light screen, as a PNG of 0.7 times that size. */
  byte[] picture(Path page, int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", SMALLER, "mobile", false));
    driver.executeCdpCommand("Emulation.setScrollbarsHidden", Map.of("hidden", true));
    driver.get(page.toUri().toString());
    return driver.getScreenshotAs(OutputType.BYTES);
  }

  /** Opens a page where nothing may run that is on it. */
  void openWithoutScripts(Path page, int width) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    open(page, width, false);
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
  }

  /** Presses a key so many times, wherever the focus is. */
  void press(CharSequence key, int times) {
    new Actions(driver).sendKeys(String.valueOf(key).repeat(times)).perform();
  }

  /** What the page's script gives. */
  Object script(String text, Object... arguments) {
    return driver.executeScript(text, arguments);
  }

  /** Errors and warnings on the console since the last time. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= java.util.logging.Level.WARNING.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  /** What was asked of others since the last time. */
  List<String> requests() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(LogEntry::getMessage)
        .flatMap(text -> ASKED.matcher(text).results())
        .map(found -> found.group(1))
        .filter(url -> !OWN.matcher(url).matches())
        .toList();
  }

  /** How many pixels it is wider than the screen. */
  long tooWide() {
    return (Long)
        script(
            "return document.documentElement.scrollWidth - document.documentElement.clientWidth;");
  }

  /** On how many sheets of A4 it prints. */
  long sheets() {
    return SHEET.matcher(new String(printed(), StandardCharsets.ISO_8859_1)).results().count();
  }

  /** The page as a PDF. */
  private byte[] printed() {
    Map<String, Object> printed =
        driver.executeCdpCommand(
            "Page.printToPDF",
            Map.of(
                "printBackground",
                true,
                "preferCSSPageSize",
                true,
                "paperWidth",
                8.27,
                "paperHeight",
                11.69));
    return Base64.getDecoder().decode((String) printed.get("data"));
  }

  /** What can have the focus and is not reached by the tabulator key, in words. */
  List<String> outOfReach() {
    script(
        "window.wanted = [...document.querySelectorAll("
            + "'a[href], button, summary, input, select, [tabindex=\"0\"]')]"
            + ".filter(e => e.offsetParent !== null);"
            + "window.met = new Set(); document.activeElement.blur();"
            + "document.addEventListener('focusin', e => window.met.add(e.target));");
    long many = (Long) script("return window.wanted.length;");
    for (long i = 0; i <= many; i++) {
      new Actions(driver).sendKeys(Keys.TAB).perform();
    }
    return words(
        "return window.wanted.filter(e => !window.met.has(e)).map(e => e.outerHTML.slice(0, 99));");
  }

  /** What an accessibility engine finds that is serious or critical, by rule and element. */
  List<String> barriers() {
    script(axe());
    return words(
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "axe.run().then(found => done(found.violations"
                + ".filter(v => v.impact === 'serious' || v.impact === 'critical')"
                + ".flatMap(v => v.nodes.map(n => v.id + ': ' + n.html.slice(0, 120)))));"));
  }

  private static String axe() {
    try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<String> words(String script) {
    return words(script(script));
  }

  private static List<String> words(Object list) {
    List<String> all = new ArrayList<>();
    ((List<?>) list).forEach(one -> all.add(String.valueOf(one)));
    return all;
  }

  @Override
  public void close() {
    driver.quit();
  }
}
