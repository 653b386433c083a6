export { configTable } from './config-table';
export { VARIABLES, type VariableName } from './environment';
export { keyBeforeOf, keyOf } from './key-file';
export { readConfig, type Config, type ConfigResult, type OpenIdConfig } from './read-config';
export { repoRoot } from './repo-root';
