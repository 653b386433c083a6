/** Jest reporter: closes a run with one plain line. A spec file that could not even be run counts as one failure. */
module.exports = class PlainSummary {
  onRunComplete(_contexts, results) {
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    process.stdout.write(`\n${results.numPassedTests} passed, ${failed} failed\n`);
  }
};
