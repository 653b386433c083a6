export * from './add-person';
export * from './change-person';
export * from './first-administrator';
export * from './list-people';
export * from './own-password';
export * from './password-rules';
export * from './use-link';
