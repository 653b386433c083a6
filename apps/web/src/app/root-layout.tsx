import { useQuery } from '@tanstack/react-query';
import { Outlet, useLocation, useNavigate } from '@tanstack/react-router';
import { lazy, Suspense, useCallback, useEffect, useRef } from 'react';
import { FailedView } from '../components/failed-view';
import { LoadingView } from '../components/loading-view';
import { KeysHelp } from '../features/keys/keys-help';
import { SignInForm } from '../features/session/sign-in-form';
import { WelcomeForm } from '../features/session/welcome-form';
import { keepFocus } from '../lib/keep-focus';
import { useLiveUpdates } from '../lib/live';
import { sessionQuery } from '../lib/session';
import { ShopHeader } from './shop-header';
import classes from './root-layout.module.css';

const SecondFactorMissing = lazy(() =>
  import('../features/session/second-factor-missing').then((one) => ({ default: one.SecondFactorMissing })),
);

const FromElsewhere = lazy(() =>
  import('../features/session/from-elsewhere').then((one) => ({ default: one.FromElsewhere })),
);

/** The frame of every page: who is at it, where one can go, and the page itself. Nobody signed in sees the door. */
export function RootLayout() {
  const session = useQuery(sessionQuery);
  const person = session.data ?? null;
  useLiveUpdates(person !== null && person.secondFactor !== 'missing');
  useEffect(keepFocus, []);
  const { pathname, hash, searchStr } = useLocation();
  const page = usePageOnArrival(pathname);
  const navigate = useNavigate();
  const home = useCallback(() => void navigate({ to: '/', replace: true }), [navigate]);
  if (pathname === '/welcome' && hash !== '') {
    return <WelcomeForm token={hash} onDone={home} />;
  }
  if (pathname === '/from-elsewhere' && searchStr !== '') {
    return (
      <Suspense fallback={<LoadingView what="the shop" />}>
        <FromElsewhere query={window.location.search} onDone={home} />
      </Suspense>
    );
  }
  if (session.isPending) return <LoadingView what="the shop" />;
  if (session.isError) {
    return <FailedView what="the shop" error={session.error} retry={() => void session.refetch()} />;
  }
  if (!person) return <SignInForm />;
  if (person.secondFactor === 'missing') {
    return (
      <Suspense fallback={<LoadingView what="the page" />}>
        <SecondFactorMissing person={person} />
      </Suspense>
    );
  }
  return (
    <>
      <a href="#page" className={classes.skip}>
        To the page
      </a>
      <ShopHeader person={person} />
      <main ref={page} id="page" className={classes.page} tabIndex={-1}>
        <Outlet />
      </main>
      <KeysHelp />
    </>
  );
}

/** Whoever goes to another page by keys or by ear is at its beginning, not at the link that led there. */
function usePageOnArrival(pathname: string) {
  const page = useRef<HTMLElement>(null);
  const before = useRef(pathname);
  useEffect(() => {
    if (before.current === pathname) return;
    before.current = pathname;
    page.current?.focus({ preventScroll: true });
  }, [pathname]);
  return page;
}
