import { verifyTrailAt } from '../../../libs/store';
import { runCommand } from './with-database';

/**
 * `npm run audit:verify [-- head]`: walks the whole trail of changes and says whether every row is as it was written.
 * With a head written down earlier it must still be in the chain. Ends with code 1 when something is wrong.
 */
runCommand(async ({ url }) => {
  const { rows, head, fault } = await verifyTrailAt(url, process.argv[2]);
  return fault
    ? { ok: false, sentence: `Row ${fault.id} of the trail is not as it was written: ${fault.why}.` }
    : { ok: true, sentence: `The trail is whole: ${rows} rows, head ${head}.` };
});
