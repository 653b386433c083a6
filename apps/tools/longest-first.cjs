const { default: Sequencer } = require('@jest/test-sequencer');

/** Folders whose spec files take minutes, the longest first. */
const LONG = ['/test/faults/', '/test/story/', '/libs/store/backup/', '/test/solo/', '/test/recheck/', '/test/sheets/'];

/**
 * Jest runs the largest spec files first where it has never measured them, and the short file that runs every fault last: one
 * worker then stands idle for minutes. Here the long ones begin, and Jest's own order holds among the rest.
 */
module.exports = class LongestFirst extends Sequencer {
  sort(tests) {
    // None of them is -1, which as an unsigned number comes after all others.
    const rank = ({ path }) => LONG.findIndex((folder) => path.includes(folder)) >>> 0;
    return [...super.sort(tests)].sort((a, b) => rank(a) - rank(b));
  }
};
