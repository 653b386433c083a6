import '@fontsource/atkinson-hyperlegible-next/latin-400.css';
import '@fontsource/atkinson-hyperlegible-next/latin-700.css';
import '@fontsource/atkinson-hyperlegible-mono/latin-500.css';
import '@fontsource/atkinson-hyperlegible-mono/latin-700.css';
import './styles/mantine.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/print.css';
import { MantineProvider } from '@mantine/core';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { queryClient } from '../lib/query-client';
import { dropIntakeDraft } from '../lib/draft';
import { dropOldKeys } from '../lib/unanswered';
import { router } from './router';
import { theme } from './theme';

dropOldKeys();
dropIntakeDraft();

const root = document.getElementById('root');
if (!root) throw new Error('the page has no element #root to draw in');

// Variables and classes come from the style sheets, so that no style element is written at run time.
createRoot(root).render(
  <StrictMode>
    <MantineProvider theme={theme} defaultColorScheme="auto" withCssVariables={false} withGlobalClasses={false}>
      <QueryClientProvider client={queryClient}>
        <RouterProvider router={router} />
      </QueryClientProvider>
    </MantineProvider>
  </StrictMode>,
);
