const swc = (parser, extra = {}) => [
  '@swc/jest',
  { swcrc: false, jsc: { target: 'es2022', parser, ...extra }, module: { type: 'commonjs' }, sourceMaps: 'inline' },
];

module.exports = {
  testEnvironment: 'node',
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
  transformIgnorePatterns: ['/node_modules/(?!(openid-client|oauth4webapi|jose)/)'],
};
