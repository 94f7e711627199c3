/**
 * Files written whole or not at all ({@link lastcopy.files.WholeFile}), whoever writes them:
 * charts, tables or JSON. It stands beside the charts since they and the command line both write,
 * and the engine may not.
 */
package lastcopy.files;
