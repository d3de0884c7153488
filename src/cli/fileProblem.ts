const PROBLEMS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'part of that path is a file, not a folder',
  EISDIR: 'it is a folder',
  EACCES: 'the system does not allow it',
  EPERM: 'the system does not allow it',
  EROFS: 'it lies on a disk that cannot be written to',
  ENOSPC: 'the disk is full',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links lead round in a circle',
};

/** What the file system refused, in words. */
export function fileProblem(error: unknown): string {
  if (!(error instanceof Error)) return 'the system gives no reason';
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  return PROBLEMS[code] ?? error.message;
}
