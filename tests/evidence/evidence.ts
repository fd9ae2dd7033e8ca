// npm run evidence: the library against published figures. See DEVELOPERS.md.
import { isDeepStrictEqual, parseArgs } from 'node:util';
import { type Calibration, calibrate } from './calibration.ts';
import { accept, committedReport, committedShares, sharesOf } from './committed.ts';
import { evidenceReport } from './evidenceReport.ts';
import { printReport } from './printReport.ts';

const { values: options } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    rows: { type: 'boolean', default: false },
    quick: { type: 'boolean', default: false },
    accept: { type: 'boolean', default: false },
  },
});

/** With `--quick` the simulations are not run again: their last result stands. */
function lastCalibration(): Calibration {
  const { coverage, windows, logs } = committedReport().calibration;
  return { coverage, windows: windows.hits, logs: logs.kinds };
}

const report = evidenceReport(options.quick ? lastCalibration() : calibrate());
console.log(options.json ? JSON.stringify(report, null, 2) : printReport(report, options.rows));

if (options.accept) {
  accept(report);
} else {
  const shares = sharesOf(report);
  const before = committedShares();
  const changed = Object.keys({ ...before, ...shares }).filter(
    (id) => !isDeepStrictEqual(before[id], shares[id]),
  );
  if (changed.length > 0 || !isDeepStrictEqual(committedReport(), report)) {
    console.error(
      `The report differs from the one that is kept${changed.length > 0 ? `, in the shares of: ${changed.join(', ')}` : ''}.\n` +
        'If that is meant, run npm run evidence -- --accept and say why in the commit.',
    );
    process.exitCode = 1;
  }
}
