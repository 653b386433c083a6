export * from './change-tag';
export * from './set-labour';
export * from './authorise';
export * from './tick-safety';
export * from './hold-ticket';
