package lastcopy.cli.option;

import java.util.Map;
import lastcopy.cli.host.Host;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Wrap;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** How wide a page is, whether it is coloured, and of which characters it is made. */
public final class PageOptions {

  /** When a page is coloured, as asked for. */
  enum When {
    auto,
    always,
    never
  }

  @Option(
      names = "--width",
      paramLabel = "COLUMNS",
      converter = Converters.PageWidth.class,
      description =
          "Columns of the page, 60 to 200 (default: the terminal's, paragraphs at most 100; 80"
              + " where there is none).")
  private Integer width;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      defaultValue = "auto",
      description = "auto, always or never (default: auto, on a terminal unless NO_COLOR is set).")
  private When color;

  @Option(names = "--ascii", description = "Write no character above 127.")
  private boolean ascii;

  /** The look of a page on a host. */
  public PageLook on(Host host) {
    return new PageLook(width(host), coloured(host), ascii);
  }

  /** As asked for; else the terminal's; else what stored pages have. */
  private int width(Host host) {
    if (width != null) {
      return width;
    }
    if (!host.terminal()) {
      return Wrap.WIDTH;
    }
    String columns = host.environment().getOrDefault("COLUMNS", "");
    int wide = columns.matches("[1-9][0-9]{0,4}") ? Integer.parseInt(columns) : measured();
    return Math.max(PageLook.NARROWEST, Math.min(PageLook.WIDEST, wide));
  }

  /** The option library asks the system. */
  private static int measured() {
    return CommandSpec.create().usageMessage().width(Wrap.WIDTH).autoWidth(true).width();
  }

  /** NO_COLOR (no-color.org) turns off what is on by itself, and not what is asked for. */
  private boolean coloured(Host host) {
    Map<String, String> environment = host.environment();
    return switch (color) {
      case always -> true;
      case never -> false;
      case auto ->
          host.terminal()
              && environment.getOrDefault("NO_COLOR", "").isEmpty()
              && !environment.getOrDefault("TERM", "").equals("dumb");
    };
  }
}
