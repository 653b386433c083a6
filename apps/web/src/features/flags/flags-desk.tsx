import { useMemo } from 'react';
import type { FlagView } from '../../../../../libs/contracts';
import { Caution } from '../../components/caution';
import { useMay } from '../../lib/session';
import { BulkBar } from './bulk-bar';
import { DecideDialog } from './decide-dialog';
import { FlagGroupSection } from './flag-group-section';
import { groupFlags } from './group-flags';
import { useDesk } from './use-desk';

/** The manager's desk: equals in groups, the worst first; one row is marked and the keys act on it. */
export function FlagsDesk({ flags }: { flags: readonly FlagView[] }) {
  const groups = useMemo(() => groupFlags(flags), [flags]);
  const order = useMemo(() => groups.flatMap((group) => group.flags), [groups]);
  const mayDecide = useMay('decide-flags');
  const desk = useDesk(order, mayDecide);
  const { ticked } = desk;
  const untick = () =>
    desk.tick(
      ticked.map(({ id }) => id),
      false,
    );
  const caution = flags.find(({ strength }) => strength !== null)?.strength?.caution;
  return (
    <>
      {caution ? <Caution>{caution}</Caution> : null}
      {ticked.length > 0 ? (
        <BulkBar many={ticked.length} onDecide={(decision) => desk.decide(decision, ticked)} onClear={untick} />
      ) : null}
      {groups.map((group) => (
        <FlagGroupSection key={group.key} group={group} desk={desk} mayDecide={mayDecide} />
      ))}
      {desk.asked ? <DecideDialog {...desk.asked} onClose={desk.close} /> : null}
    </>
  );
}
