// Counts tests from vitest's own JSON report, never from what it prints.
import { readFileSync } from 'node:fs';

/**
 * @typedef {{ passed: number, failed: number }} Tally
 * @typedef {{ status: string, assertionResults: unknown[] }} ReportedFile
 * @typedef {{ success: boolean, numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number, testResults: ReportedFile[] }} Report
 */

/** @type {Tally} */
export const emptyTally = { passed: 0, failed: 0 };

/**
 * A test file that fell over before its first test, and a test that was passed over, count as failed.
 * @param {Report} report
 * @returns {Tally}
 */
export function tallyReport(report) {
  const fallen = report.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  const failed = report.numFailedTests + fallen.length + report.numPendingTests + report.numTodoTests;
  return { passed: report.numPassedTests, failed: failed === 0 && !report.success ? 1 : failed };
}

/**
 * @param {string} file
 * @returns {Tally | undefined} nothing when there is no readable report
 */
export function readTally(file) {
  try {
    return tallyReport(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return undefined;
  }
}
