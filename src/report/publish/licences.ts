import { CC_BY, type Licence } from './document/blocks.ts';

/** A licence as a list offers it: `id` by the SPDX list, which the data package's description wants. */
export interface LicenceOffered extends Licence {
  id: string;
  /** What it lets others do, in plain words. */
  lets: string;
}

/** Licences for findings and data; the first one is taken where nothing else is chosen. */
export const LICENCES: readonly LicenceOffered[] = [
  { ...CC_BY, id: 'CC-BY-4.0', lets: 'Others may use and change it, and name you.' },
  {
    id: 'CC-BY-SA-4.0',
    name: 'CC BY-SA 4.0',
    address: 'https://creativecommons.org/licenses/by-sa/4.0/',
    lets: 'As above, and what they make of it stays as free.',
  },
  {
    id: 'CC0-1.0',
    name: 'CC0 1.0',
    address: 'https://creativecommons.org/publicdomain/zero/1.0/',
    lets: 'Others may do anything with it, without naming you.',
  },
];

/** The licence of that id; the usual one for any other. */
export const licenceOf = (id: string): LicenceOffered => LICENCES.find((one) => one.id === id) ?? LICENCES[0]!;
