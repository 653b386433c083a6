export * from './load-ticket';
export * from './gate-facts';
export * from './view-ticket';
export * from './flag-view';
export * from './say-event';
export * from './say-needless';
