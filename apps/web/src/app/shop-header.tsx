import { Link } from '@tanstack/react-router';
import type { Me } from '../../../../libs/contracts';
import { SearchField } from '../features/search/search-field';
import { PersonMenu } from '../features/session/person-menu';
import classes from './shop-header.module.css';

const PLACES = [
  { to: '/', words: 'Board', needs: 'see-tickets' },
  { to: '/which-part', words: 'Which part?', needs: 'look-up' },
  { to: '/flagged', words: 'Flagged', needs: 'see-flags' },
  { to: '/callbacks', words: 'Callbacks', needs: 'see-callbacks' },
  { to: '/bulletins', words: 'Bulletins', needs: 'see-bulletins' },
  { to: '/rulebook', words: 'Rulebook', needs: 'see-bulletins' },
  { to: '/shop', words: 'Shop', needs: 'see-shop-data' },
  { to: '/people', words: 'People', needs: 'manage-people' },
] as const;

/** Where one can go, the search field, and who is at the page. */
export function ShopHeader({ person }: { person: Me }) {
  return (
    <header className={classes.header}>
      <span className={classes.name}>Revright</span>
      <nav aria-label="Shop" className={classes.nav}>
        {PLACES.filter(({ needs }) => person.permissions.includes(needs)).map(({ to, words }) => (
          <Link key={to} to={to} className={classes.place} activeOptions={{ exact: to === '/', includeSearch: false }}>
            {words}
          </Link>
        ))}
      </nav>
      <SearchField />
      <PersonMenu person={person} />
    </header>
  );
}
