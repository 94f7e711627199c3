/**
 * Many histories of a studio: chunks, threads, stopping, and results with their intervals.
 *
 * <p>This is the door for a program that uses the engine as a library: describe a studio with the
 * records of {@code lastcopy.scenario} and the laws of {@code lastcopy.law}, simulate it, and read
 * each figure with its interval. A mirror whose drives live 50,000 h on average and are whole again
 * 500 h after a failure, both exponential, over ten years:
 *
 * <pre>{@code
 * DriveModel drive =
 *     new DriveModel(
 *         "desk-8tb", 8 * Units.TB, OptionalDouble.empty(), OptionalDouble.empty(),
 *         OptionalDouble.empty(), new Exponential(50_000), new Fixed(0), 0, Optional.empty());
 * Rebuild rebuild = new Rebuild(new Rebuild.ByLaw(new Exponential(500)), Rebuild.Reads.ALL);
 * Medium mirror =
 *     new Medium.DriveSet(
 *         2, drive, Arrangement.MIRROR, Optional.empty(), rebuild, OptionalDouble.empty(),
 *         Optional.empty(), Optional.empty(), 1, 0);
 * Copy main =
 *     new Copy(
 *         "main", new Place("studio", List.of()), Optional.empty(), mirror,
 *         new Copy.Repair(Delay.none(), Delay.none(), new Fixed(0)), Optional.empty(),
 *         OptionalDouble.empty(), 0, Copy.Reach.ONLINE, true, Optional.empty(), Optional.empty());
 * Shoots shoots = new Shoots(Units.HOURS_PER_WEEK, 24 * Units.GB, Shoots.Spacing.EVEN);
 * Footage footage =
 *     new Footage(
 *         Units.TB, shoots, 0, OptionalDouble.empty(), Footage.DEFAULT_CLIP_BYTES,
 *         OptionalDouble.empty());
 * Layout layout = new Layout("mirror", "Two drives", List.of(main), OptionalDouble.empty());
 * Studio studio =
 *     new Studio("Harbour", 10, Optional.empty(), footage, Desk.QUIET, List.of(layout));
 * Settings settings =
 *     new Settings(1, 0.95, 0.02, OptionalLong.empty(), Optional.of(Duration.ofMinutes(1)), 2);
 * Comparison result = Simulation.run(studio, settings, Progress.SILENT);
 * Estimate loss = result.layouts().get(0).anyLoss();
 * System.out.println(loss.value() + " (" + loss.low() + " to " + loss.high() + ")");
 * }</pre>
 *
 * <p>It prints a chance near 0.0333, the exact answer of that chain. Times are in hours, sizes in
 * bytes, and the horizon of a studio in years of 8,760 h. A {@code Progress} may watch and cancel.
 */
package lastcopy.simulate;
