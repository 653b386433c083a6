import { createRootRoute } from '@tanstack/react-router';
import { NotFoundPage } from './pages/not-found-page';
import { RootLayout } from './root-layout';

/** What every page stands in. */
export const root = createRootRoute({ component: RootLayout, notFoundComponent: NotFoundPage });
