import { createRoute } from '@tanstack/react-router';
import { pageOf } from './page-of';
import { root } from './root-route';
import { idParams } from './search-params';

export const ticket = createRoute({
  getParentRoute: () => root,
  path: '/tickets/$id',
  params: idParams,
  component: pageOf(() => import('./pages/ticket-page'), 'TicketPage'),
});
export const sheet = createRoute({
  getParentRoute: () => root,
  path: '/tickets/$id/sheet',
  params: idParams,
  component: pageOf(() => import('./pages/handover-sheet-page'), 'HandoverSheetPage'),
});
export const tag = createRoute({
  getParentRoute: () => root,
  path: '/tickets/$id/tag',
  params: idParams,
  component: pageOf(() => import('./pages/tag-page'), 'TagPage'),
});
export const newTicket = createRoute({
  getParentRoute: () => root,
  path: '/new-ticket',
  validateSearch: (given: Record<string, unknown>): { unit?: number } => ({
    unit: Number.isInteger(given['unit']) ? (given['unit'] as number) : undefined,
  }),
  component: pageOf(() => import('./pages/new-ticket-page'), 'NewTicketPage'),
});
export const unit = createRoute({
  getParentRoute: () => root,
  path: '/units/$id',
  params: idParams,
  component: pageOf(() => import('./pages/unit-page'), 'UnitPage'),
});
export const trail = createRoute({
  getParentRoute: () => root,
  path: '/units/$id/trail',
  params: idParams,
  component: pageOf(() => import('./pages/trail-page'), 'TrailPage'),
});
export const owner = createRoute({
  getParentRoute: () => root,
  path: '/owners/$id',
  params: idParams,
  component: pageOf(() => import('./pages/owner-page'), 'OwnerPage'),
});
