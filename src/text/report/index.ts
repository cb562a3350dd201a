export { report, type ReportInput, type ReportOptions } from './report.ts';
