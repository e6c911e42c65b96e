/** A file or folder that cannot be used, in a sentence for the person. */
export class FileRefusal extends Error {
  override name = 'FileRefusal';
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'is not there',
  EACCES: 'may not be read or written by you',
  EPERM: 'may not be read or written by you',
  ENOSPC: 'does not fit: the disk is full',
  ENAMETOOLONG: 'has a name that is too long',
  ELOOP: 'is a link that leads round in a circle',
  EROFS: 'is on a disk that cannot be written to',
  ENOTDIR: 'lies under something that is not a folder',
  EISDIR: 'is a folder',
  EBUSY: 'is in use by another program',
};

/** Turns what the file system said into a sentence about `path`. */
export function fileTrouble(path: string, error: unknown): FileRefusal {
  if (error instanceof FileRefusal) return error;
  const code = (error as NodeJS.ErrnoException | null)?.code ?? '';
  return new FileRefusal(`${path} ${REASONS[code] ?? `could not be used (${code || String(error)})`}.`, {
    cause: error,
  });
}
