import { type PackageReading, type ReadPackageOptions, readPackage } from '../../../src/report/package/readPackage.ts';
import { refusalText } from '../../../src/report/package/refusal.ts';

export const NOW = '2026-11-25T09:00Z';

const encoder = new TextEncoder();

export function bytes(files: Record<string, string | Uint8Array>): Map<string, Uint8Array> {
  return new Map(
    Object.entries(files).map(([path, content]) => [
      path,
      typeof content === 'string' ? encoder.encode(content) : content,
    ]),
  );
}

export function read(
  files: Record<string, string | Uint8Array>,
  options: Partial<ReadPackageOptions> = {},
): PackageReading {
  return readPackage(bytes(files), { now: NOW, ...options });
}

export const sentences = (reading: PackageReading): string[] => reading.refusals.map(refusalText);

/** A small package in which everything is right. */
export const GOOD = {
  'trial.csv': 'trial,title,opened_on\nclub,Club trial,2026-10-03\n',
  'cables.csv': 'cable,claimed_size,claimed_metal\nquill,2 AWG,OFC\nsaltmarsh,2 AWG,copper\n',
  'specimens.csv': 'specimen,cable,cut_length,cut_length_unit,kind\nq1,quill,300,mm,apart\ns1,saltmarsh,300,mm,apart\n',
  'instruments.csv': 'instrument,kind,resolution,unit\nscale,pocket scale,0.01,g\n',
  'readings.csv':
    'reading,specimen,quantity,value,unit,instrument,at\n' +
    'r1,q1,conductor_mass,93.10,g,scale,2026-10-03T10:00Z\n' +
    'r2,s1,conductor_mass,3.28,oz,scale,2026-10-03T10:01Z\n',
} as const;
