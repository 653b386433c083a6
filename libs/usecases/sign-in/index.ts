export * from './session-rules';
export * from './sign-in';
export * from './me-of';
export * from './own-reading';
export * from './brake';
export * from './known-device';
export * from './find-session';
export * from './demo-people';
