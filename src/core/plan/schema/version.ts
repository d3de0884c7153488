/** The version that this program writes. In a file of its own, for those who need no schema with it. */
export const PLAN_VERSION = 1;
