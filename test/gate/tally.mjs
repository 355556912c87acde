/**
 * Reads the counts out of the two test runners' JSON reports. A run that broke without a failed test
 * (a missing report, a file that does not load, an unhandled error) still counts as a failure.
 */

/** @typedef {{ passed: number, failed: number }} Tally */

/**
 * @param {unknown} report
 * @param {string} key
 */
function count(report, key) {
  const value = report && typeof report === 'object' ? Reflect.get(report, key) : undefined;
  return typeof value === 'number' ? value : 0;
}

/**
 * @param {Tally} tally
 * @param {boolean} ok whether the runner itself ended well
 * @returns {Tally}
 */
const settle = ({ passed, failed }, ok) => ({ passed, failed: !ok && failed === 0 ? 1 : failed });

/**
 * @param {unknown} report Vitest's JSON report
 * @param {boolean} ok
 * @returns {Tally}
 */
export function tallyVitest(report, ok) {
  const files = report && typeof report === 'object' ? Reflect.get(report, 'testResults') : [];
  const unloaded = (Array.isArray(files) ? files : []).filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  ).length;
  return settle(
    { passed: count(report, 'numPassedTests'), failed: count(report, 'numFailedTests') + unloaded },
    ok,
  );
}

/**
 * @param {unknown} report Playwright's JSON report; a flaky test did not pass every time, so it failed
 * @param {boolean} ok
 * @returns {Tally}
 */
export function tallyPlaywright(report, ok) {
  const stats = report && typeof report === 'object' ? Reflect.get(report, 'stats') : undefined;
  return settle(
    { passed: count(stats, 'expected'), failed: count(stats, 'unexpected') + count(stats, 'flaky') },
    ok,
  );
}
