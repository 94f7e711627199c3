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
 *     DriveModel.builder("desk-8tb", 8 * Units.TB).fails(new Exponential(50_000)).build();
 * Medium mirror =
 *     Medium.DriveSet.builder(Arrangement.MIRROR, 2)
 *         .of(drive)
 *         .rebuild(new Exponential(500))
 *         .build();
 * Copy main = Copy.builder("main").on(mirror).build();
 * Shoots shoots = new Shoots(Units.HOURS_PER_WEEK, 24 * Units.GB, Shoots.Spacing.EVEN);
 * Studio studio =
 *     Studio.builder("Harbour", 10)
 *         .footage(Footage.builder(shoots).onHand(Units.TB).build())
 *         .layout(Layout.builder("mirror").title("Two drives").copy(main).build())
 *         .build();
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
