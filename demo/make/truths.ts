/**
 * What is really inside the invented cables. These figures exist here alone: the package holds only what a bench would
 * have read, scattered and rounded by the tools, so nobody can look the answer up while trying the program.
 */
export interface Truth {
  id: string;
  maker: string;
  model: string;
  role: '' | 'control';
  /** Two consonants without the maker's initials, written on the tags. */
  code: string;
  price: number;
  boughtLength: number; // m
  /** m of it, at whose ends the ohm meter's contacts are set before anything is cut. */
  ohmedLength: number;
  label: { size: string; metal: string; strands: number | null; printed: string };
  jacketColour: string;
  stranding: string;
  /** What the tester counted: bundles × strands, or strands alone. Not always what is there. */
  counted: { bundles: number | null; strands: number };
  strands: number;
  strandDiameter: number; // m
  layFactor: number;
  density: number; // kg/m³ of the metal
  resistivity: number; // Ω·m at 20 °C
  temperatureCoefficient: number; // 1/K
  bundleDiameter: number; // m
  wall: number; // m, mean
  wallOffset: number; // m, how far the bundle sits off the middle
  jacketDensity: number; // kg/m³
  separatorPerMetre: number; // kg/m
  scraped: string | null;
  note: string;
}

const copper = { density: 8895, resistivity: 1.7241e-8 / 1.003, temperatureCoefficient: 0.00393 };
const tinned = { density: 8860, resistivity: 1.7241e-8 / 0.971, temperatureCoefficient: 0.00382 };
/** Copper skin of 14 % of the volume over aluminium, the two conducting side by side. */
const clad = { density: 0.14 * 8890 + 0.86 * 2703, resistivity: 2.608e-8, temperatureCoefficient: 0.00398 };

export const TRUTHS: readonly Truth[] = [
  {
    ...copper,
    id: 'brackenfell',
    maker: 'Brackenfell',
    model: 'Boot Run',
    role: '',
    code: 'KR',
    price: 39.5,
    boughtLength: 2.5,
    ohmedLength: 2,
    label: { size: '2 AWG', metal: 'OFC', strands: 686, printed: 'BRACKENFELL BOOT RUN 2 AWG OFC' },
    jacketColour: 'black',
    stranding: 'rope, 7 bundles',
    counted: { bundles: null, strands: 686 },
    strands: 686,
    strandDiameter: 0.2538e-3,
    layFactor: 1.036,
    bundleDiameter: 8.42e-3,
    wall: 1.92e-3,
    wallOffset: 0.11e-3,
    jacketDensity: 1330,
    separatorPerMetre: 0.0011,
    scraped: 'red through',
    note: '',
  },
  {
    ...tinned,
    id: 'nine-elms',
    maker: 'Nine Elms Cord',
    model: 'Marine Two',
    role: '',
    code: 'VT',
    price: 38.9,
    boughtLength: 2,
    ohmedLength: 2,
    label: { size: '2 AWG', metal: 'tinned copper', strands: 665, printed: 'NINE ELMS CORD 2 AWG TINNED' },
    jacketColour: 'red',
    stranding: 'rope, 7 bundles',
    counted: { bundles: 7, strands: 95 },
    strands: 665,
    strandDiameter: 0.2553e-3,
    layFactor: 1.041,
    bundleDiameter: 8.55e-3,
    wall: 2.1e-3,
    wallOffset: 0.07e-3,
    jacketDensity: 1290,
    separatorPerMetre: 0.0009,
    scraped: null,
    note: '',
  },
  {
    ...clad,
    id: 'tollgate',
    maker: 'Tollgate',
    model: 'Power Two',
    role: '',
    code: 'LB',
    price: 14.2,
    boughtLength: 3,
    ohmedLength: 3,
    label: { size: '2 AWG', metal: 'OFC copper', strands: null, printed: 'TOLLGATE 2AWG OFC POWER CABLE' },
    jacketColour: 'red',
    stranding: 'bunched',
    counted: { bundles: null, strands: 1050 },
    strands: 1050,
    strandDiameter: 0.2012e-3,
    layFactor: 1.022,
    bundleDiameter: 8.38e-3,
    wall: 2.02e-3,
    wallOffset: 0.28e-3,
    jacketDensity: 1410,
    separatorPerMetre: 0.0006,
    scraped: null,
    note: 'sold by the metre',
  },
  {
    ...copper,
    id: 'harrow-sedge',
    maker: 'Harrow & Sedge',
    model: 'No. 2 Flexible',
    role: '',
    code: 'GN',
    price: 24.4,
    boughtLength: 2,
    ohmedLength: 2,
    label: { size: '2 AWG', metal: 'copper', strands: 651, printed: 'HARROW & SEDGE No.2 FLEX' },
    jacketColour: 'black',
    stranding: 'rope, 7 bundles',
    // One bundle lies hidden in the middle of the other six, and was not seen.
    counted: { bundles: 6, strands: 93 },
    strands: 651,
    strandDiameter: 0.2545e-3,
    layFactor: 1.033,
    bundleDiameter: 8.3e-3,
    wall: 2.0e-3,
    wallOffset: 0.15e-3,
    jacketDensity: 1350,
    separatorPerMetre: 0.0014,
    scraped: null,
    note: '',
  },
  {
    ...copper,
    id: 'quill',
    maker: 'Quill',
    model: 'Blue 2',
    role: '',
    code: 'DM',
    price: 19.8,
    boughtLength: 2,
    ohmedLength: 2,
    label: { size: '2 AWG', metal: 'copper', strands: 665, printed: 'QUILL 2 AWG' },
    jacketColour: 'blue',
    stranding: 'bunched',
    counted: { bundles: null, strands: 560 },
    strands: 560,
    strandDiameter: 0.2549e-3,
    layFactor: 1.028,
    bundleDiameter: 7.7e-3,
    wall: 3.38e-3,
    wallOffset: 0.22e-3,
    jacketDensity: 1440,
    separatorPerMetre: 0.0005,
    scraped: null,
    note: '',
  },
  {
    ...copper,
    id: 'saltmarsh',
    maker: 'Saltmarsh',
    model: 'Two Gauge Lead',
    role: '',
    code: 'CW',
    price: 21,
    boughtLength: 1.8,
    ohmedLength: 1.5,
    label: { size: '2 AWG', metal: '100 % copper', strands: null, printed: 'SALTMARSH 2 AWG 100% COPPER' },
    jacketColour: 'black',
    stranding: 'bunched',
    counted: { bundles: null, strands: 342 },
    strands: 342,
    strandDiameter: 0.3147e-3,
    layFactor: 1.024,
    bundleDiameter: 7.25e-3,
    wall: 2.28e-3,
    wallOffset: 0.18e-3,
    jacketDensity: 1380,
    separatorPerMetre: 0.0008,
    scraped: null,
    note: 'left over from an earlier job, about two years old',
  },
  {
    ...copper,
    id: 'house-wire',
    maker: 'House wire',
    model: 'solid, single',
    role: 'control',
    code: 'ZP',
    price: 1.6,
    boughtLength: 2,
    ohmedLength: 2,
    label: { size: '12 AWG', metal: 'copper', strands: 1, printed: '' },
    jacketColour: 'white',
    stranding: 'solid',
    counted: { bundles: null, strands: 1 },
    strands: 1,
    strandDiameter: 2.046e-3,
    layFactor: 1,
    bundleDiameter: 2.046e-3,
    wall: 0.82e-3,
    wallOffset: 0.04e-3,
    jacketDensity: 1400,
    separatorPerMetre: 0,
    scraped: null,
    note: 'plain solid building wire: it has no lay, so mass and ohms together must come out at copper’s own figure',
  },
];
