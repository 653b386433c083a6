import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Where the API of a running shop answers, for `vite` in development. */
const API = process.env['REVRIGHT_API'] ?? 'http://127.0.0.1:4780';

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react()],
  build: {
    outDir: '../../dist/apps/web',
    emptyOutDir: true,
    // The server's content policy refuses data: addresses for fonts and scripts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      treeshake: {
        // The rooms a page may import do nothing when they are loaded, so a page carries of them what it uses alone.
        moduleSideEffects: (id) => !/\/libs\/[a-z-]+\/.*\.ts$/.test(id),
      },
    },
  },
  // The API refuses changes asked for by another site, so the page's own host name goes through.
  server: { proxy: { '/api': { target: API, changeOrigin: false } } },
});
