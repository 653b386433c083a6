export * from './source';
export * from './fit-rule';
export * from './fit-rule-file';
export * from './unit-facts';
export * from './ruling';
export * from './verdict';
export * from './signatures';
