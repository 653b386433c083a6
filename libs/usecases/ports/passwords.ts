/** How passwords are kept and compared; neither says why a password does not match. */
export interface Passwords {
  hash(password: string): Promise<string>;
  /** `hash` null compares with a password nobody has, so that an unknown login takes as long as a known one. */
  verify(hash: string | null, password: string): Promise<boolean>;
}
