const swc = (parser, extra = {}) => [
  '@swc/jest',
  { swcrc: false, jsc: { target: 'es2022', parser, ...extra }, module: { type: 'commonjs' }, sourceMaps: 'inline' },
];

module.exports = {
  testEnvironment: 'node',
  // Databases and Redis start on first demand, so a spec of a pure lib starts none; teardown stops what was started.
  globalSetup: '<rootDir>/libs/testing/global-setup.ts',
  globalTeardown: '<rootDir>/libs/testing/global-teardown.ts',
  testSequencer: '<rootDir>/apps/tools/longest-first.cjs',
  testTimeout: 30_000,
  reporters: ['default', '<rootDir>/apps/tools/plain-summary.cjs'],
  testMatch: ['<rootDir>/{apps,libs,test}/**/*.spec.ts'],
  modulePathIgnorePatterns: ['<rootDir>/dist/', '<rootDir>/data/'],
  transform: {
    '^.+\\.tsx?$': swc(
      { syntax: 'typescript', tsx: false, decorators: true },
      { transform: { legacyDecorator: true, decoratorMetadata: true } },
    ),
    '^.+\\.m?js$': swc({ syntax: 'ecmascript' }),
  },
  // ESM-only packages that Jest must turn into CommonJS.
  transformIgnorePatterns: ['/node_modules/(?!(@prisma/schema-engine-wasm|openid-client|oauth4webapi|jose|saxen)/)'],
};
