/**
 * What commands need of the world around them, so that tests can give another: streams, a terminal,
 * an engine, interruption ({@link lastcopy.cli.host.Host}, {@link lastcopy.cli.host.Interruption}),
 * names of files that may be written ({@link lastcopy.cli.host.OutputFile}), scenarios ({@link
 * lastcopy.cli.host.ScenarioLoading}), and what is said when something fails ({@link
 * lastcopy.cli.host.Failures}, {@link lastcopy.cli.host.ExitStatus}).
 */
package lastcopy.cli.host;
