/**
 * The import law of the house. Each room names the rooms it may open a door to; everything else is refused.
 * The picture in DEVELOPERS.md is generated from this list.
 */
const PURE = [
  'shape',
  'day',
  'part-number',
  'build-date',
  'fastener',
  'fit-rules',
  'ticket',
  'sheets',
  'contracts',
  'papers',
];

const ROOMS = {
  'libs/shape': [],
  'libs/day': [],
  'libs/part-number': ['libs/day'],
  'libs/build-date': ['libs/day'],
  'libs/fastener': ['libs/shape', 'libs/day'],
  'libs/fit-rules': ['libs/shape', 'libs/day', 'libs/part-number', 'libs/build-date', 'libs/fastener'],
  'libs/ticket': ['libs/day', 'libs/part-number', 'libs/build-date', 'libs/fastener', 'libs/fit-rules'],
  'libs/sheets': ['libs/day', 'libs/part-number', 'libs/build-date', 'libs/fastener', 'libs/fit-rules'],
  'libs/contracts': PURE.filter((name) => name !== 'contracts' && name !== 'papers').map((name) => `libs/${name}`),
  'libs/papers': ['libs/day', 'libs/fastener', 'libs/contracts'],
  'libs/usecases': PURE.map((name) => `libs/${name}`),
  'libs/config': [],
  'libs/sheet-files': ['libs/sheets'],
  'libs/demo': PURE.map((name) => `libs/${name}`),
  'libs/store': ['libs/usecases', 'libs/config', 'libs/demo', ...PURE.map((name) => `libs/${name}`)],
  'libs/queue': ['libs/usecases', 'libs/config', ...PURE.map((name) => `libs/${name}`)],
  'libs/pictures': ['libs/usecases', 'libs/contracts'],
  'libs/press': ['libs/usecases', 'libs/papers', 'libs/contracts'],
  'libs/mail': ['libs/usecases', 'libs/papers', 'libs/contracts'],
  'libs/courier': ['libs/usecases'],
  'libs/testing': [
    'libs/store',
    'libs/queue',
    'libs/usecases',
    'libs/demo',
    'libs/config',
    ...PURE.map((name) => `libs/${name}`),
  ],
  'apps/api': [
    'libs/usecases',
    'libs/press',
    'libs/mail',
    'libs/courier',
    'libs/sheet-files',
    'libs/pictures',
    'libs/store',
    'libs/queue',
    'libs/config',
    ...PURE.map((name) => `libs/${name}`),
  ],
  'apps/worker': [
    'libs/usecases',
    'libs/mail',
    'libs/courier',
    'libs/store',
    'libs/queue',
    'libs/config',
    ...PURE.map((name) => `libs/${name}`),
  ],
  'apps/solo': [
    'apps/api',
    'apps/worker',
    'libs/usecases',
    'libs/pictures',
    'libs/store',
    'libs/queue',
    'libs/demo',
    'libs/config',
    ...PURE.map((name) => `libs/${name}`),
  ],
  'apps/web': PURE.map((name) => `libs/${name}`),
  'apps/cli': ['libs/demo', 'libs/sheet-files', ...PURE.map((name) => `libs/${name}`)],
};

const SPEC = '(\\.spec\\.ts$|/testing/)';

const directions = Object.entries(ROOMS).map(([room, doors]) => ({
  name: `${room.replace('/', '-')}-opens-only-its-own-doors`,
  severity: 'error',
  comment: `${room} may import ${doors.join(', ') || 'no other room'}.`,
  from: { path: `^${room}/`, pathNot: SPEC },
  to: { path: '^(apps|libs|test)/', pathNot: [`^${room}/`, ...doors.map((door) => `^${door}/`)] },
}));

module.exports = {
  forbidden: [
    ...directions,
    {
      name: 'no-cycle',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'a-lib-is-entered-by-its-index',
      severity: 'error',
      from: { path: '^(?:apps|libs|test)/([^/]+)/' },
      to: {
        path: '^libs/([^/]+)/.+',
        // Starting a server and migrating are doors of their own: they need none of the store's queries.
        pathNot: [
          '^libs/$1/',
          '^libs/[^/]+/index\\.ts$',
          '^libs/store/(embedded|migrate)/index\\.ts$',
          '^libs/[^/]+/testing/',
        ],
      },
    },
    {
      name: 'a-pure-lib-does-no-io',
      severity: 'error',
      comment: 'Pure libs may use zod and unit arithmetic; nothing that reads, writes, listens or injects.',
      from: { path: `^libs/(${[...PURE, 'demo'].join('|')})/`, pathNot: SPEC },
      to: {
        dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-no-pkg', 'npm-unknown', 'unknown'],
        pathNot: 'node_modules/(zod|js-quantities|@types/js-quantities)/',
      },
    },
    {
      name: 'use-cases-know-no-framework',
      severity: 'error',
      from: { path: '^libs/usecases/', pathNot: SPEC },
      to: { dependencyTypes: ['npm', 'npm-dev'], pathNot: 'node_modules/(zod|@zxcvbn-ts|otpauth)/' },
    },
    {
      name: 'only-the-store-knows-the-database',
      severity: 'error',
      from: { path: '^(apps|libs)/', pathNot: ['^libs/store/', '^libs/testing/', SPEC] },
      to: { path: 'node_modules/(pg|@prisma|pg-copy-streams)/' },
    },
    {
      name: 'only-pictures-knows-the-picture-library',
      severity: 'error',
      from: { path: '^(apps|libs)/', pathNot: ['^libs/pictures/', SPEC] },
      to: { path: 'node_modules/(sharp|@img)/' },
    },
    {
      name: 'only-the-queue-knows-the-queue',
      severity: 'error',
      from: { path: '^(apps|libs)/', pathNot: ['^libs/queue/', '^libs/testing/', SPEC] },
      to: { path: 'node_modules/(bullmq|ioredis)/' },
    },
    {
      name: 'one-file-knows-the-other-provider',
      severity: 'error',
      from: { path: '^(apps|libs)/', pathNot: ['^apps/api/src/session/open-id\\.ts$', SPEC] },
      to: { path: 'node_modules/openid-client/' },
    },
    {
      name: 'only-the-press-makes-pdf',
      severity: 'error',
      from: { path: '^(apps|libs)/', pathNot: ['^libs/press/', SPEC] },
      to: { path: 'node_modules/(pdfmake|@types/pdfmake)/' },
    },
    {
      name: 'only-mail-speaks-smtp',
      severity: 'error',
      from: { path: '^(apps|libs)/', pathNot: ['^libs/mail/', SPEC] },
      to: { path: 'node_modules/(nodemailer|@types/nodemailer)/' },
    },
    {
      name: 'only-sheet-files-knows-spreadsheet-formats',
      severity: 'error',
      from: { path: '^(apps|libs)/', pathNot: ['^libs/sheet-files/', '^apps/cli/', SPEC] },
      to: { path: 'node_modules/(papaparse|yauzl|saxen|write-excel-file|chardet|iconv-lite)/' },
    },
    {
      name: 'no-dev-dependency-in-production-code',
      severity: 'error',
      from: { path: '^(apps|libs)/', pathNot: [SPEC, '^libs/testing/', '^apps/(web|tools)/'] },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only', 'npm'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: ['^dist/', '^libs/store/generated/'] },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
  },
};
// Hidden from the tool, which refuses properties it does not know.
Object.defineProperty(module.exports, 'ROOMS', { value: ROOMS });
