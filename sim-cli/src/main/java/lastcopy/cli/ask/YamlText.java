package lastcopy.cli.ask;

import com.samskivert.mustache.Escapers;
import com.samskivert.mustache.Mustache;
import lastcopy.cli.scenario.yaml.Printable;

/** Text of a person as YAML, whatever signs are in it. */
final class YamlText {

  /** Backslashes first, so that what is put in is not taken for more of them. */
  private static final Mustache.Escaper WITHIN =
      Escapers.simple(new String[][] {{"\\", "\\\\"}, {"\"", "\\\""}});

  private YamlText() {}

  /** In double quotes, in one line. */
  static String quoted(String text) {
    return '"' + Printable.of(WITHIN.escape(text)) + '"';
  }
}
