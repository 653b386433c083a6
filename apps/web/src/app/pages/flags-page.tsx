import { useQuery } from '@tanstack/react-query';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { FlagsDesk } from '../../features/flags/flags-desk';
import { flagsQuery } from '../../features/flags/flags-query';
import { count } from '../../lib/say';

/** Flagged installs: every doubtful part in one place, with its reason, before the unit leaves. */
export function FlagsPage() {
  const flags = useQuery(flagsQuery);
  return (
    <>
      <h1>
        Flagged installs{' '}
        {flags.data ? <span className="soft">{count(flags.data.length, 'waits', 'wait')} for a manager</span> : null}
      </h1>
      <QueryView query={flags} what="the flagged installs">
        {(open) =>
          open.length === 0 ? (
            <EmptyView title="Nothing is flagged">
              <p>A part that is outdated, wrong, disputed or undecided turns up here by itself.</p>
            </EmptyView>
          ) : (
            <FlagsDesk flags={open} />
          )
        }
      </QueryView>
    </>
  );
}
