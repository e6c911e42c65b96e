import { readPackage } from '../../../report/package/readPackage.ts';
import { unzipPackage } from '../../../report/package/zip.ts';
import type { BroughtFile, Jobs, PackageRead } from './jobs.ts';

/** Reads what was brought: a lone .zip is unpacked first, anything else is taken as the files of one package. */
export function readJob({ files, name, keepGood, now, shelf }: Jobs['read']['ask']): PackageRead {
  return readPackage(filesOf(files), { trial: name, keepGood, now, shelf });
}

function filesOf(files: readonly BroughtFile[]): Map<string, Uint8Array> {
  const only = files[0];
  if (files.length === 1 && only !== undefined && /\.zip$/i.test(only.path)) return unzipPackage(only.bytes);
  return new Map(files.map((file) => [file.path, file.bytes]));
}
