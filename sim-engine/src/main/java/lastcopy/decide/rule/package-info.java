/**
 * When a pick among candidates is settled, from intervals of their chances of loss and of their
 * costs alone: nothing here is simulated.
 *
 * <p>All intervals, and all comparisons of pairs, hold at once but for the stated chance of a wrong
 * pick, whatever is looked at and how often ({@link lastcopy.decide.rule.ErrorBudget}). While they
 * do
 *
 * <ul>
 *   <li>a candidate that is beaten, surely dearer and surely riskier than another, is no answer to
 *       anything and is left early ({@link lastcopy.decide.rule.Beaten}; successive elimination:
 *       Even-Dar, Mannor, Mansour, JMLR 7 (2006) 1079-1105);
 *   <li>picks go by the estimates, and a pick is settled against a rival once the intervals, or
 *       histories in pairs ({@link lastcopy.decide.rule.Pairs}; common random numbers: Nelson and
 *       Matejcik, Management Science 41 (1995) 1935-1945), say that it is no worse by more than an
 *       indifference zone ({@link lastcopy.decide.rule.Zone}; Bechhofer, Annals of Mathematical
 *       Statistics 25 (1954) 16-39);
 *   <li>the front is settled once each candidate is covered by one on the front: that costs and
 *       loses no more, but for the zone (an ε-accurate Pareto set: Zuluaga, Krause, Püschel, JMLR
 *       17(104) (2016)).
 * </ul>
 */
package lastcopy.decide.rule;
