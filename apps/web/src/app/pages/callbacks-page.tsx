import { getRouteApi, Link } from '@tanstack/react-router';
import { STATE_WORDS } from '../../features/callbacks/callback-words';
import { CallbacksList } from '../../features/callbacks/callbacks-list';
import { CALLBACK_STATES } from '../../features/callbacks/callbacks-query';
import classes from '../../features/callbacks/callbacks.module.css';

const route = getRouteApi('/callbacks');

/** Whom to call today, and what to say. */
export function CallbacksPage() {
  const { state } = route.useSearch();
  const shown = CALLBACK_STATES.find((one) => one === state) ?? 'due';
  return (
    <>
      <h1>Callbacks</h1>
      <nav aria-label="Callbacks by state" className={classes.tabs}>
        {CALLBACK_STATES.map((one) => (
          <Link
            key={one}
            to="/callbacks"
            search={{ state: one }}
            className={classes.tab}
            aria-current={one === shown ? 'page' : undefined}
          >
            {STATE_WORDS[one]}
          </Link>
        ))}
      </nav>
      <CallbacksList state={shown} />
    </>
  );
}
