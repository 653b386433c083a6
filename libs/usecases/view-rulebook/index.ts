export * from './view-sources';
export * from './list-rules';
export * from './list-findings';
export * from './view-wall-chart';
