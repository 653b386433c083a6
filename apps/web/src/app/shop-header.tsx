import { Link, useLocation } from '@tanstack/react-router';
import { useRef, useState, type KeyboardEvent } from 'react';
import type { Me } from '../../../../libs/contracts';
import { SearchField } from '../features/search/search-field';
import { PersonMenu } from '../features/session/person-menu';
import classes from './shop-header.module.css';

const MY_BENCH = { to: '/my-bench', words: 'My bench', needs: 'see-tickets' } as const;
const BENCHES = { to: '/benches', words: 'Benches', needs: 'see-tickets' } as const;
const PLACES = [
  { to: '/board', words: 'Board', needs: 'see-tickets' },
  { to: '/which-part', words: 'Which part?', needs: 'look-up' },
  { to: '/shelf', words: 'Shelf', needs: 'see-shelf' },
  { to: '/flagged', words: 'Flagged', needs: 'see-flags' },
  { to: '/callbacks', words: 'Callbacks', needs: 'see-callbacks' },
  { to: '/bulletins', words: 'Bulletins', needs: 'see-bulletins' },
  { to: '/rulebook', words: 'Rulebook', needs: 'see-bulletins' },
  { to: '/figures', words: 'Figures', needs: 'see-figures' },
  { to: '/shop', words: 'Shop', needs: 'see-shop-data' },
  { to: '/people', words: 'People', needs: 'manage-people' },
] as const;

/**
 * The search field, where one can go, a technician's own bench first, and who is at the page. On a phone places and person
 * are behind a button, so that the page begins after one row.
 */
export function ShopHeader({ person }: { person: Me }) {
  const { pathname } = useLocation();
  const [open, setOpen] = useState(false);
  const [seenAt, setSeenAt] = useState(pathname);
  const button = useRef<HTMLButtonElement>(null);
  if (seenAt !== pathname) {
    setSeenAt(pathname);
    setOpen(false);
  }
  // What closes takes the focus away with it unless the button has it; another page takes it on arrival.
  const close = () => {
    if (!open) return;
    setOpen(false);
    button.current?.focus();
  };
  const closeByKey = ({ key }: KeyboardEvent) => (key === 'Escape' ? close() : undefined);
  return (
    <header className={classes.header} data-open={open || undefined} onKeyDown={closeByKey}>
      <span className={classes.name}>Revright</span>
      <button
        ref={button}
        type="button"
        className={classes.menu}
        aria-expanded={open}
        aria-controls="places"
        onClick={() => setOpen(!open)}
      >
        Menu
      </button>
      <SearchField />
      <nav id="places" aria-label="Shop" className={classes.nav}>
        {[person.role === 'technician' ? MY_BENCH : BENCHES, ...PLACES]
          .filter(({ needs }) => person.permissions.includes(needs))
          .map(({ to, words }) => (
            <Link key={to} to={to} className={classes.place} activeOptions={{ includeSearch: false }} onClick={close}>
              {words}
            </Link>
          ))}
      </nav>
      <div className={classes.person}>
        <PersonMenu person={person} />
      </div>
    </header>
  );
}
