import { isIP } from 'node:net';
import ipaddr from 'ipaddr.js';

/** All that is given out as public in IPv6 (RFC 4291 and IANA's registry of IPv6 address space). */
const GLOBAL_V6 = ipaddr.IPv6.parseCIDR('2000::/3');

/**
 * True for an address anybody's machine could have: not private, loopback, link-local (where clouds tell their secrets),
 * shared, multicast, unique-local or reserved, and no IPv4 address in the dress of IPv6, save that a mapped one
 * (`::ffff:...`) is taken for the IPv4 address it is. Text that is no address is not public.
 */
export function isPublicAddress(text: string): boolean {
  if (isIP(text) === 0) return false;
  const address = ipaddr.process(text);
  if (address.range() !== 'unicast') return false;
  // The library takes ::127.0.0.1 and other remains of old ways between the two worlds for unicast.
  return address.kind() === 'ipv4' || address.match(GLOBAL_V6);
}
