/** Suites that take long come first, so that no worker is left alone with one at the end. */
import Sequencer from "@jest/test-sequencer";

const first = ["hosts", "browser", "fuzz", "package", "sheets"];
const place = ({ path }) => first.findIndex((folder) => path.includes(`/test/${folder}/`)) + 1 || Infinity;

export default class LongestFirst extends Sequencer {
  /** @override */
  sort(/** @type {import("@jest/test-result").Test[]} */ tests) {
    return [.../** @type {typeof tests} */ (super.sort(tests))].sort((a, b) => place(a) - place(b) || 0);
  }
}
