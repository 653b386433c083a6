/** The reader: no script and no style of its own, since the page's policy allows scripts from files alone. */
export const READER_PAGE = `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <title>Revright: the API</title>
    <link rel="icon" href="data:," />
    <link rel="stylesheet" href="/api/reader/swagger-ui.css" />
  </head>
  <body>
    <main id="reader"></main>
    <script src="/api/reader/swagger-ui-bundle.js"></script>
    <script src="/api/reader/start.js"></script>
  </body>
</html>
`;

export const READER_START = `SwaggerUIBundle({
  url: '/api/openapi.json',
  dom_id: '#reader',
  deepLinking: true,
  docExpansion: 'none',
  defaultModelsExpandDepth: 0,
  // The document is checked here, not by a service elsewhere.
  validatorUrl: null,
});
`;
