import { Link } from '@tanstack/react-router';
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

/** Where one can go, a technician's own bench first, the search field, and who is at the page. */
export function ShopHeader({ person }: { person: Me }) {
  return (
    <header className={classes.header}>
      <span className={classes.name}>Revright</span>
      <nav aria-label="Shop" className={classes.nav}>
        {[person.role === 'technician' ? MY_BENCH : BENCHES, ...PLACES]
          .filter(({ needs }) => person.permissions.includes(needs))
          .map(({ to, words }) => (
            <Link key={to} to={to} className={classes.place} activeOptions={{ includeSearch: false }}>
              {words}
            </Link>
          ))}
      </nav>
      <SearchField />
      <PersonMenu person={person} />
    </header>
  );
}
