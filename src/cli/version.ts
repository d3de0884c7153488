/** The version of package.json; a test keeps the two alike. */
export const VERSION = '0.1.0';
