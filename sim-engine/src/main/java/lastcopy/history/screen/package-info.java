/**
 * Decides in most histories, without an event and without an allocation, that nothing is lost in
 * them.
 *
 * <h2>Speed</h2>
 *
 * <p>64 histories in a row are decided at once ({@link lastcopy.history.screen.HistoryLanes}), so
 * that a processor overlaps the draws of one with those of the next: first failures and first
 * shocks are uniforms compared with limits computed once; sets that only fail and heal are reckoned
 * in short loops over all their drives ({@link lastcopy.history.screen.LoneSet}, {@link
 * lastcopy.history.screen.DriveLanes}, {@link lastcopy.history.screen.Downtimes}); sets whose
 * drives matter to each other (strain, a batch, planned swaps, read errors) are played alone
 * ({@link lastcopy.history.screen.PlayedSet}), unless so few fail that it cannot matter ({@link
 * lastcopy.history.screen.FewFailures}, {@link lastcopy.history.screen.OneFailure}); and then,
 * history by history, one outage with nothing on it that is nowhere else ({@link
 * lastcopy.history.screen.LoneOutage}). These keep primitive arrays: an object a drive would cost
 * what the screen saves.
 *
 * <p>It decides by a list of what it reckons with ({@link lastcopy.history.plan.Effect}): what a
 * mechanism does not say, or says and no class here reckons with, is left to the event by event
 * engine. In doubt it says no, and the history is played in full; every draw is keyed by what it is
 * for, so both see the same luck.
 *
 * <h2>Where a drive failure is sampled</h2>
 *
 * <p>A drive's life is one unit exponential, the budget of {@code Draws.budget}, against the hazard
 * that its law runs up. That is spelled four times, with the same key and the same sums: in {@code
 * hazard.HazardClock}, where factors may change at any time; in {@code PlayedSet}, the same for a
 * set by itself without the clocks' bookkeeping of a bias; in {@code DriveLanes}, for the same
 * drive of 64 histories at once, without a branch; and in {@code LoneOutage}, as one comparison.
 * One function for all would hold the screen to the pace of the engine. {@code WholeModelTest} and
 * {@code LanesTest} hold each against the engine, to the last bit of what is drawn.
 *
 * <h2>Measured</h2>
 *
 * <pre>
 * mvn -Pbench -pl sim-engine test-compile exec:exec
 * </pre>
 *
 * <p>runs JMH on two pairs of drives: the general engine through {@code History} on one thread and
 * on two, hand-written Java for that model only, and an event library, side by side; then what a
 * history of a set costs by its drives and years. It also prints the bytes that a history
 * allocates: none unless something is lost. Compare ratios of one run, never single figures.
 *
 * <p>Processor time of a history in nanoseconds, one thread, one machine, in one sitting:
 *
 * <pre>
 *                                                                         harsh pair  Weibull pair
 * event library                                                           560         250
 * engine with sets, places and feeds only; StrictMath, a heap, no screen  586         115
 * engine with all mechanisms; Elementary, Agenda, no screen               483         97
 * engine, each history screened by itself                                 195         50
 * engine, 64 histories screened together                                  121         25
 * </pre>
 *
 * <p>Where the rest goes: about a third to the histories of the harsh pair that lose something (one
 * in thirty) and are played in full, at about 1 µs each, some 80 ns an event; nearly half to draws.
 * A draw costs 5 ns where draws overlap, 30 ns where the next depends on it. {@code Elementary}
 * takes a logarithm in 2 ns and a power in 5 ns, where StrictMath takes 11 and 74. Mechanisms that
 * a scenario does not use cost a history that the screen decides nothing. Branches on what is drawn
 * cost more than the draws: a wrong guess throws away all that was overlapped. So does, on x86, a
 * conversion from long to double, which waits for what its register held before. Histories per
 * second in one run on two quiet cores, with errors of 1 to 4 %: engine 8.8 million for the harsh
 * pair and 39 million for the Weibull pair, twice that on two threads (17.4 and 85 million); event
 * library 1.8 and 3.8 million, so 5.0 and 10.3 times; plain Java for that model alone 8.0 and 13.6
 * million. Before all mechanisms were there it was 1.7 and 9.0 million: scenarios that use none of
 * them are faster than they were, by the screen. A history allocates nothing but its losses (0.001
 * bytes).
 *
 * <p>Until the Weibull pair's chance, 9.1e-6, is known to ±5 %, the event library takes 42 s and
 * the engine, with its pilot, tuning and all figures, 21 ms on one thread: two thousand times less,
 * by the bias.
 *
 * <p>A history of a double-parity set costs, in nanoseconds, by its drives and years:
 *
 * <pre>
 *            1 year  10 years  50 years
 * 3 drives   10      30        150
 * 6 drives   16      55        300
 * 20 drives  41      164       1,040
 * 60 drives  111     500       3,700
 * </pre>
 *
 * <p>That is 2 ns a drive and 40 to 60 ns a failure (9 of them with 60 drives in 10 years, 57 in
 * 50): linear in both, but for a little where many drives were down in the same months, since those
 * are counted failure by failure.
 *
 * <p>What one mechanism or law more costs a plain history of which only losses are counted ({@code
 * -Dbench.main=lastcopy.benchmark.OneThingRatios}: a mirror of three drives and a far drive fed
 * nightly, ten years), in times the studio without, which takes 45 ns. Processor time, in turns
 * with and without, of short turns. The goal is 5. It took 66 ns before a mishap of a place was
 * decided without an event where drives fail too; those marked * are ratios to that.
 *
 * <pre>
 *                                                              times
 * Weibull, by age, sum; bought at an age *                     1.5 to 1.6; 1.0
 * an age by law; box                                           3.4; 2.3
 * parity, double parity; looks, a wait by law *                1.0, 1.4; 1.1 to 1.3
 * takes, service, cards, keep for, growth *                    0.9 to 1.4
 * continuous feed, rotation, a feed that stops *               2.0 to 2.9
 * malware; read errors; a working copy that starts empty *     1.4; 1.4; 1.3
 * deletions, two in a history                                  4.5
 * planned replacement; strain *; rebuild of the part in use    1.6; 2.0; 2.2
 * strain and a sum; latent defects                             3.2; 3.6
 * random shoots; shelf                                         4.5; 4.5
 * batch; spoils                                                4.5; 14.7
 * </pre>
 *
 * <p>A batch took 325 ns and takes 210, strain and a sum 260 and 145, since a set of which so few
 * first drives may fail that one always stands is not played; deletions 255 and 205, since they are
 * decided for 64 histories together. Random shoots took 390 ns and take 200, a shelf 410 and 200.
 *
 * <p>Where strain, planned swaps, defects or a rebuild of the part in use made a history be played,
 * it took 2.8 to 7.3 times as long. Most such histories have so few failures that none of this
 * matters ({@link lastcopy.history.screen.FewFailures}), or one, which strains the others for days
 * ({@link lastcopy.history.screen.OneFailure}). The same count before sets that only fail and heal
 * saves nothing: those are reckoned as quickly.
 *
 * <p>Before it had a course a working copy that starts empty took 74 µs, and random shoots took 1.7
 * µs instead of 0.3. Of the first 20,000 histories, of which times are wanted too, one takes 1.7 to
 * 2.1 µs without anything more, 18 with random shoots (it was 157), 4.7 where the working copy
 * starts empty (166). Spoils cost what they do since one such history in five does lose something,
 * shoot by shoot, and is played.
 *
 * <p>What spares the working copy passes: while it stands it holds all, whatever happens to other
 * copies and their feeds, and what disappears at the desk if it keeps that until it is noticed. A
 * working copy that hides bits must not be read without redundancy meanwhile.
 *
 * <p>The figures that follow are of the first demo before it had a desk, read errors and a copy
 * that may turn out unusable. With them, and {@code --precision 5%}, it plays 123,000 histories,
 * most of which have an event: 5 s of processor time in all on a busy machine, on one thread.
 *
 * <p>{@code java -jar .. compare scenarios/harbour-mirror-or-far-copy.yaml} takes 1.3 s cold on two
 * quiet cores (2.2 s of processor time), with two charts 1.6 to 1.7 s. It took 5.0 s of processor
 * time; 3.3 s by the screen; 2.2 s once losses of what is behind were biased, 22,000 histories
 * instead of 6.7 million. Most of the rest is Java's own compiler: profiling doubles what histories
 * cost before they are compiled well, and the compiler takes as long again. {@code
 * sim-cli/lastcopy} therefore starts with the quick compiler only and an archive of classes.
 * Processor time in times a bare JVM's, medians of 5 interleaved runs on a busy machine (so ratios
 * only):
 *
 * <pre>
 *                     table  with two charts
 * java -jar         38     49
 * sim-cli/lastcopy  17     19
 * </pre>
 *
 * <p>A quick compiler makes long runs two to three times slower, so {@code QuickStart} gives up
 * what has more to go than a second start costs, after 2 s of processor time, or at once from 5
 * million histories on; the launcher sees status 75 and begins anew with all compilers. A long run
 * so loses at most those 2 s. Raising the thresholds of the better compiler instead (10 and 100
 * times) saved little. {@code story} and {@code prove} start with all compilers.
 *
 * <p>The archive is a static one, from a list of classes ({@code sim-cli/pom.xml}, phase package):
 * a dynamic one written by an ordinary run made this command three times slower, since methods that
 * wait for the compiler when the run ends are archived as waiting, and are never compiled. It
 * belongs to one Java and one jar at one path; whatever does not fit is ignored. Memory does not
 * depend on the number of histories: 100,000 and 30 million both run in a heap of 48 MB (125 and
 * 133 MB resident).
 */
package lastcopy.history.screen;
