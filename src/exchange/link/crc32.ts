// Version 1 of links is frozen, and looks for it here.
export { crc32 } from '../crc32';
