/**
 * Importance sampling: histories of one layout whose hazards are biased towards losses, each
 * weighted by its likelihood ratio. {@link lastcopy.simulate.rare.Pilot} says whether that pays,
 * {@link lastcopy.simulate.rare.Tuning} finds the biases by cross entropy, {@link
 * lastcopy.simulate.rare.RareRun} counts under a {@link lastcopy.simulate.rare.Mixture} of them
 * into a {@link lastcopy.simulate.rare.RareTally}.
 *
 * <p>A good layout loses footage once in 1e5 to 1e10 histories. {@code simulate.rare} then biases
 * hazards and weighs each history by its likelihood ratio, which keeps every figure unbiased
 * whatever the bias and whatever an event does to other hazards (Heidelberger, Shahabuddin, Nicola,
 * ACM TOMACS 4(2), 1994).
 *
 * <table>
 * <caption>Steps</caption>
 * <tr><th>step</th><th>where</th><th>what</th></tr>
 * <tr><td>pilot</td><td>{@code Pilot}</td><td>the first 20,000 plain histories, which exposure
 *     needs anyway, say by their counts whether tuning is worth its while: under 2e6 plain
 *     histories it is not</td></tr>
 * <tr><td>tuning</td><td>{@code Tuning}</td><td>one factor for each group of sources (drives of
 *     a copy, a mishap ...) at each level ({@code Levels}: how many things are wrong, and
 *     whether some footage stands in one copy only), by cross entropy from a balanced start; on
 *     a seed of its own, on all threads</td></tr>
 * <tr><td>counting</td><td>{@code RareRun}, {@code RareTally}</td><td>a mixture of biases:
 *     balanced, tuned to any loss, to bytes, to the loss of everything; a weight is the plain
 *     density over that of the mixture, from the events and hazards that the engine kept
 *     ({@code PathStatistics})</td></tr>
 * <tr><td>trust</td><td>{@code WeightedTally}, {@code RareRun.doubt}</td><td>see below; doubted
 *     histories are dropped and plain ones go on, or, under {@code --method rare}, intervals are
 *     widened; either way the result says why ({@code Caveats})</td></tr>
 * </table>
 *
 * <ul>
 *   <li><b>Why factors by group and level</b>: piecewise constant, so that a density under any
 *       other bias follows from two numbers a group and level. That gives mixtures, and the best
 *       factor in closed form.
 *   <li><b>Why a level tells what stands in one copy only</b>: most losses of a good layout are of
 *       the newest shoot, in the hours before it is elsewhere. On the undisturbed course these
 *       hours come and go by the clock ({@code BareTimes}), without an event: a hazard is split at
 *       their edges, which are reckoned once for what is there from the start ({@code BareHazard}),
 *       and else searched only when a source is next. A drive with a nightly far copy takes 20,000
 *       biased histories to ±2 % instead of 650,000 (and 6.7 million plain ones); two mirrors with
 *       a continuous feed, at 1.7e-7, 76,000 where before a minute of them gave ±12 %.
 *   <li><b>Why spots are placed</b> ({@code Spots}): that an unreadable spot meets the newest shoot
 *       is rare by itself. In half of the histories one is put where no other copy holds what it
 *       costs.
 *   <li><b>Why a drive whose partner is down is a group of its own</b> ({@code Groups}): of
 *       mirrored pairs with one drive down the next failure takes the copy only if it is the
 *       partner's. With all drives raised alike forty drives in pairs, at 1e-6, took 490,000
 *       histories to ±5 %; so they take at most twice the 12,000 of one pair that loses as rarely.
 *       Models of a copy are told apart too, since what is a sure failure of a used drive beside a
 *       repair may be a rare one of a new drive.
 *   <li><b>Why a mixture</b>: tuned to any loss alone, a layout that mostly loses what was not yet
 *       copied never shows how it loses everything. The balanced part bounds the weight of what
 *       tuning has not seen.
 *   <li><b>Why factors are lowered after tuning</b>: cross entropy finds a hazard of μ beside a
 *       repair of rate μ, where the variance is infinite; the least variance is at μ/2. Both sides
 *       of it are in the mixture.
 *   <li><b>Why two stages</b> (Stein, Annals of Mathematical Statistics 16, 1945): a stop at the
 *       first sample that looks precise favours samples that have not met a heavy weight, and with
 *       them every figure is low and held too seldom (91 % instead of 95 %; at ±5 % still 93 % with
 *       looks as seldom as each eighth more). So a first stage, a quarter of the histories, says
 *       how many the precision takes, with an allowance for how few weights its variance rests on,
 *       and does not count; so many are then counted without a look, and only where their own width
 *       still falls short a quarter is added. {@code StoppingTest} holds it. With a cap on
 *       histories there is one stage; what ends by its time counts in both.
 *   <li><b>Who has the time</b>: layouts that are biased share what is left of it with the plain
 *       ones; a lone one has all. Where a lone one is still tuned after half of it, or its first
 *       stage still doubted, it gives way to plain histories; so does, by counts alone, a first
 *       stage that shows that plain ones would be done sooner.
 *   <li><b>What cannot lose</b> ends early: where the scenario says that nothing ever befalls the
 *       working copy ({@code NoWayToLose}), and where not even biased histories lose anything.
 *   <li><b>After the first loss</b> of a history nothing is biased, so that its weight stays and
 *       all its losses have the same.
 *   <li><b>Intervals</b>: corrected for skewness (Hall, JRSS B 54, 1992), above the wider of it and
 *       a logarithmic one, with Student's quantile at (Σx²)²/Σx⁴ degrees of freedom. With lognormal
 *       weights of any spread an estimate that calls itself trusted is wrong at most 7 % of the
 *       time. Trusted: at least 30 effective losses, none above 20 %, and a variance that rests on
 *       at least 10. A figure that is less gets Markov's lower bound and what plain histories say
 *       above.
 *   <li><b>Pairs</b> of which one is biased are compared as independent: different biases share no
 *       luck.
 *   <li><b>Unlikely draws that are no events</b> are biased too, since a precise common way to lose
 *       hides a rare one that needs such a draw: {@code takes} is a hazard of −ln(1 − takes) that
 *       is run up at one instant, a group like any other ({@code Clocks.chance}); a notice is
 *       drawn, in 30 % of the histories, beyond a time at which copies may drop what disappeared
 *       ({@code Notices}); the hazard of a latent defect is raised before it is met, in proportion
 *       to the chance that no scrub has found it yet, so that one is alive in a quarter of the
 *       histories ({@code Defects}). The last two any bias draws alike: their ratio is a factor of
 *       the weight ({@code PathStatistics.places}). {@code UnlikelyDrawsTest} holds them against
 *       sums by hand. A block that is deleted is put, in some histories, where it meets what only
 *       the working copy holds.
 *   <li><b>What luck has not shown</b> ({@code Channels}): at each such draw the chance that it
 *       comes out badly is known, given the past; its weighted sum has the mean of the draws that
 *       did. Where fewer than 10 effective draws of a kind did, the rest of its chance goes into
 *       the upper end of every figure (times what is at stake into that of a mean), and above a
 *       tenth of the chance of a loss the result is not trusted and says which draw it was.
 *   <li><b>Means hold the tail that was never seen</b>: the limit of the chance of a loss larger
 *       than any seen, times how much larger it can be ({@code MeanTally.unseen}; of biased
 *       histories, the limit of its share of the effective losses). The precision that stops a
 *       simulation is that of what was seen.
 *   <li><b>The frailty of a batch</b> is biased too ({@code Frailty}): that m of its drives fail
 *       goes with z^m, so half of the histories draw it from a Gamma law with a shape larger by m.
 *       As it falls, runs stopped before they met a frail batch: the chance of a double-parity set
 *       of one batch was held by 77 % of them.
 *   <li><b>Strata</b>: histories are dealt to the parts of a mixture in fixed shares, so what
 *       differs between their means is no luck ({@code WeightedTally}).
 *   <li><b>Not biased</b>: the delays of repairs, ages that follow a law, when shoots come at
 *       random. None of them has a threshold beyond which footage is lost: each changes hazards, in
 *       proportion, and those are biased.
 * </ul>
 *
 * <p>Proof ({@code RareChainsTest}, {@code mvn verify -Pslow}): exact chains against 1,000 seeds
 * each, every seed tuned and counted afresh. Histories: 5,000; stopped runs go on to ±10 %. A 95 %
 * interval must hold the exact chance in at least 93 % of seeds; the relative error is that of one
 * run of 5,000 histories.
 *
 * <table>
 * <caption>Exact chains, 1,000 seeds each</caption>
 * <tr><th>layout</th><th>exact chance</th><th>relative error</th><th>mean / exact</th><th>held,
 *     of 1,000</th><th>stopped: held</th></tr>
 * <tr><td>mirror</td><td>8.2e-4</td><td>2.2 %</td><td>0.9997 ±
 *     0.0007</td><td>955</td><td>957</td></tr>
 * <tr><td>mirror</td><td>7.4e-11</td><td>3.3 %</td><td>0.9985 ±
 *     0.0010</td><td>951</td><td>956</td></tr>
 * <tr><td>triple mirror</td><td>8.1e-9</td><td>6.0 %</td><td>0.9995 ±
 *     0.0019</td><td>957</td><td>961</td></tr>
 * <tr><td>double parity of 8</td><td>4.5e-7</td><td>5.2 %</td><td>0.9988 ±
 *     0.0016</td><td>954</td><td>952</td></tr>
 * <tr><td>double parity of 8</td><td>7.9e-13</td><td>6.8 %</td><td>0.9977 ±
 *     0.0022</td><td>958</td><td>961</td></tr>
 * <tr><td>mirror, second mirror, service; shared fires</td><td>5.4e-5</td><td>4.1
 *     %</td><td>0.9993 ± 0.0013</td><td>957</td><td>951</td></tr>
 * <tr><td>the same, rarer</td><td>8.2e-8</td><td>4.1 %</td><td>1.0004 ±
 *     0.0013</td><td>962</td><td>964</td></tr>
 * <tr><td>the same, rarer still</td><td>2.7e-10</td><td>4.2 %</td><td>1.0003 ±
 *     0.0013</td><td>952</td><td>960</td></tr>
 * <tr><td>mirror, fails while the feed runs</td><td>3.7e-14</td><td>3.9 %</td><td>1.0009 ±
 *     0.0012</td><td>961</td><td>944</td></tr>
 * </table>
 *
 * <p>Beside it: plain histories by the million where nothing is exponential ({@code
 * RareBruteForceTest}), sums by hand ({@code BehindTest}), and, for studios of the whole model,
 * that the mean of the likelihood ratio is 1 ({@code BiasTest}), which also finds any two sources
 * that share their luck.
 */
package lastcopy.simulate.rare;
