/**
 * What a comparison says in sentences: the answer, layouts against each other, how much is lost,
 * and what stands beside the figures. Shared by the table and the page.
 */
package lastcopy.cli.sentence;
