/** What the command line answers to the program that called it. */
export const EXIT = {
  fine: 0,
  /** The check found something that breaks a wish. */
  checkFailed: 1,
  /** The words of the command, the plan or the file to write are at fault. */
  unusable: 2,
  /** A mistake of this program; not 1, which says something about the plan. */
  ownMistake: 3,
} as const;

/** One of these numbers. */
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
