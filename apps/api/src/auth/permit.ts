import { SetMetadata } from '@nestjs/common';
import { POLICY, type Permission } from '../../../../libs/contracts';

export const PERMISSION_KEY = 'permission';

/** What a route asks of the person: a permission, being signed in, or nothing. */
export type RoutePermission = Permission | 'signed-in' | 'own-sign-in' | 'open';

/** True when it is a permission of the policy, and not one of the words for everybody. */
export const isPermission = (asked: RoutePermission | undefined): asked is Permission =>
  asked !== undefined && asked in POLICY;

/** The permission a route asks for. Every route names one, or the API does not start. */
export const Permit = (permission: Permission) => SetMetadata(PERMISSION_KEY, permission satisfies RoutePermission);

/** A route for everybody who is signed in. */
export const ForSignedIn = () => SetMetadata(PERMISSION_KEY, 'signed-in' satisfies RoutePermission);

/**
 * A route about one's own sign-in: for everybody who is signed in, even one who has yet to add a second factor that the
 * shop requires.
 */
export const ForOwnSignIn = () => SetMetadata(PERMISSION_KEY, 'own-sign-in' satisfies RoutePermission);

/** A route for everybody, signed in or not. */
export const OpenToAll = () => SetMetadata(PERMISSION_KEY, 'open' satisfies RoutePermission);
