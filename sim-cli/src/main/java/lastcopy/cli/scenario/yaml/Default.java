package lastcopy.cli.scenario.yaml;

/**
 * A default that was used because the file says nothing.
 *
 * @param where the path of the section, such as {@code layouts.mirror.main}
 * @param key the key that was left out
 * @param value what was used instead, in the words of the file
 * @param origin "format default", or "assumption" where the value is a guess of this project, or
 *     {@link #TYPICAL}
 */
public record Default(String where, String key, String value, String origin) {

  /** Where the file asks for a typical value by name. */
  public static final String TYPICAL = "typical value, an assumption";
}
