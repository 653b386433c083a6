import { createRoute, createRouter } from '@tanstack/react-router';
import { FINDING_SEVERITIES, type FindingsQuery } from '../../../../libs/contracts';
import { LoadingView } from '../components/loading-view';
import { FailedView } from '../components/failed-view';
import { StartPage } from './pages/start-page';
import { pageOf } from './page-of';
import { root } from './root-route';
import { boardSearch, dayIn, daysOf, idParams, text } from './search-params';
import { newTicket, owner, sheet, tag, ticket, trail, unit } from './unit-routes';

const start = createRoute({ getParentRoute: () => root, path: '/', component: StartPage });
const board = createRoute({
  getParentRoute: () => root,
  path: '/board',
  validateSearch: boardSearch,
  component: pageOf(() => import('./pages/board-page'), 'BoardPage'),
});
const benches = createRoute({
  getParentRoute: () => root,
  path: '/benches',
  component: pageOf(() => import('./pages/benches-page'), 'BenchesPage'),
});
const myBench = createRoute({
  getParentRoute: () => root,
  path: '/my-bench',
  component: pageOf(() => import('./pages/my-bench-page'), 'MyBenchPage'),
});
const search = createRoute({
  getParentRoute: () => root,
  path: '/search',
  validateSearch: (given: Record<string, unknown>): { q?: string } => ({ q: text(given['q']) }),
  component: pageOf(() => import('./pages/search-page'), 'SearchPage'),
});
const lookUp = createRoute({
  getParentRoute: () => root,
  path: '/which-part',
  component: pageOf(() => import('./pages/look-up-page'), 'LookUpPage'),
});
const wallChart = createRoute({
  getParentRoute: () => root,
  path: '/wall-chart/$line',
  validateSearch: daysOf,
  component: pageOf(() => import('./pages/wall-chart-page'), 'WallChartPage'),
});
const rulebook = createRoute({
  getParentRoute: () => root,
  path: '/rulebook',
  validateSearch: (given: Record<string, unknown>): { line?: string; position?: string; q?: string } => ({
    line: text(given['line']),
    position: text(given['position']),
    q: text(given['q']),
  }),
  component: pageOf(() => import('./pages/rulebook-page'), 'RulebookPage'),
});
const findings = createRoute({
  getParentRoute: () => root,
  path: '/rulebook/findings',
  validateSearch: (given: Record<string, unknown>): FindingsQuery => ({
    ...daysOf(given),
    line: text(given['line']),
    severity: FINDING_SEVERITIES.find((one) => one === given['severity']),
  }),
  component: pageOf(() => import('./pages/findings-page'), 'FindingsPage'),
});
const bulletins = createRoute({
  getParentRoute: () => root,
  path: '/bulletins',
  component: pageOf(() => import('./pages/bulletins-page'), 'BulletinsPage'),
});
const newBulletin = createRoute({
  getParentRoute: () => root,
  path: '/bulletins/new',
  component: pageOf(() => import('./pages/bulletin-editor-page'), 'NewBulletinPage'),
});
const bulletin = createRoute({
  getParentRoute: () => root,
  path: '/bulletins/$id',
  params: idParams,
  component: pageOf(() => import('./pages/bulletin-page'), 'BulletinPage'),
});
const editBulletin = createRoute({
  getParentRoute: () => root,
  path: '/bulletins/$id/edit',
  params: idParams,
  component: pageOf(() => import('./pages/bulletin-editor-page'), 'EditBulletinPage'),
});
const flags = createRoute({
  getParentRoute: () => root,
  path: '/flagged',
  component: pageOf(() => import('./pages/flags-page'), 'FlagsPage'),
});
const callbacks = createRoute({
  getParentRoute: () => root,
  path: '/callbacks',
  validateSearch: (given: Record<string, unknown>): { state?: string } => ({ state: text(given['state']) }),
  component: pageOf(() => import('./pages/callbacks-page'), 'CallbacksPage'),
});
const figures = createRoute({
  getParentRoute: () => root,
  path: '/figures',
  validateSearch: (given: Record<string, unknown>): { from?: string; to?: string } => ({
    from: dayIn(given['from']),
    to: dayIn(given['to']),
  }),
  component: pageOf(() => import('./pages/figures-page'), 'FiguresPage'),
});

const shelf = createRoute({
  getParentRoute: () => root,
  path: '/shelf',
  validateSearch: (given: Record<string, unknown>): { q?: string; only?: string } => ({
    q: text(given['q']),
    only: text(given['only']),
  }),
  component: pageOf(() => import('./pages/shelf-page'), 'ShelfPage'),
});
const shelfItem = createRoute({
  getParentRoute: () => root,
  path: '/shelf/items/$id',
  params: idParams,
  component: pageOf(() => import('./pages/shelf-item-page'), 'ShelfItemPage'),
});
const shelfOrders = createRoute({
  getParentRoute: () => root,
  path: '/shelf/orders',
  component: pageOf(() => import('./pages/shelf-orders-page'), 'ShelfOrdersPage'),
});

const shop = createRoute({
  getParentRoute: () => root,
  path: '/shop',
  component: pageOf(() => import('./pages/shop-page'), 'ShopPage'),
});
const shopParts = createRoute({
  getParentRoute: () => root,
  path: '/shop/parts',
  validateSearch: (given: Record<string, unknown>): { code?: string } => ({ code: text(given['code']) }),
  component: pageOf(() => import('./pages/parts-page'), 'PartsPage'),
});
const newScheme = createRoute({
  getParentRoute: () => root,
  path: '/shop/schemes/new',
  component: pageOf(() => import('./pages/scheme-page'), 'NewSchemePage'),
});
const scheme = createRoute({
  getParentRoute: () => root,
  path: '/shop/schemes/$id',
  params: idParams,
  validateSearch: (given: Record<string, unknown>): { recheck?: number } => ({
    recheck: Number.isInteger(given['recheck']) ? (given['recheck'] as number) : undefined,
  }),
  component: pageOf(() => import('./pages/scheme-page'), 'SchemePage'),
});

const settings = createRoute({
  getParentRoute: () => root,
  path: '/shop/settings',
  component: pageOf(() => import('./pages/settings-page'), 'SettingsPage'),
});
const inAndOut = createRoute({
  getParentRoute: () => root,
  path: '/shop/in-and-out',
  component: pageOf(() => import('./pages/in-and-out-page'), 'InAndOutPage'),
});
const programs = createRoute({
  getParentRoute: () => root,
  path: '/shop/programs',
  component: pageOf(() => import('./pages/programs-page'), 'ProgramsPage'),
});
const recheck = createRoute({
  getParentRoute: () => root,
  path: '/rechecks/$id',
  params: idParams,
  component: pageOf(() => import('./pages/recheck-page'), 'RecheckPage'),
});

const people = createRoute({
  getParentRoute: () => root,
  path: '/people',
  component: pageOf(() => import('./pages/people-page'), 'PeoplePage'),
});
const mySignIn = createRoute({
  getParentRoute: () => root,
  path: '/my-sign-in',
  component: pageOf(() => import('./pages/my-sign-in-page'), 'MySignInPage'),
});

/** The pages by address; each is fetched when it is first opened. */
export const router = createRouter({
  routeTree: root.addChildren([
    start,
    board,
    benches,
    myBench,
    ticket,
    sheet,
    tag,
    newTicket,
    unit,
    trail,
    owner,
    search,
    lookUp,
    wallChart,
    rulebook,
    findings,
    bulletins,
    newBulletin,
    bulletin,
    editBulletin,
    flags,
    callbacks,
    shelf,
    shelfItem,
    shelfOrders,
    figures,
    shop,
    shopParts,
    newScheme,
    scheme,
    settings,
    inAndOut,
    programs,
    recheck,
    people,
    mySignIn,
  ]),
  defaultPreload: 'intent',
  defaultPendingComponent: () => <LoadingView what="the page" />,
  defaultErrorComponent: ({ error, reset }) => <FailedView what="this page" error={error} retry={reset} />,
  scrollRestoration: true,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
