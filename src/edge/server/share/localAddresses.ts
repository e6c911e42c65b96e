import { type NetworkInterfaceInfo, networkInterfaces } from 'node:os';

/** Networks that exist only inside this computer, between it and what it runs in containers and virtual machines. */
const INNER_NETWORK = /^(docker|br-|veth|virbr|vmnet|vboxnet|vEthernet)/i;

/** How likely a phone finds this address: home networks first, then other private ones (RFC 1918), then the rest. */
function rank(address: string): number {
  if (address.startsWith('192.168.')) return 0;
  if (address.startsWith('10.')) return 1;
  return /^172\.(1[6-9]|2\d|3[01])\./.test(address) ? 2 : 3;
}

/** The IPv4 addresses under which other devices on the local network reach this computer, the likeliest first. */
export function localAddresses(interfaces: NodeJS.Dict<NetworkInterfaceInfo[]> = networkInterfaces()): string[] {
  const addresses = Object.entries(interfaces)
    .filter(([name]) => !INNER_NETWORK.test(name))
    .flatMap(([, infos]) => infos ?? [])
    // 169.254…: the computer found no network and made an address up (RFC 3927).
    .filter((info) => info.family === 'IPv4' && !info.internal && !info.address.startsWith('169.254.'))
    .map((info) => info.address);
  return [...new Set(addresses)].sort((a, b) => rank(a) - rank(b));
}
