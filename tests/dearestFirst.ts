import { existsSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take longest, the longest first. What is not named here comes after them. */
const DEAREST = [
  'tests/browser/playSpeed.picture.test.ts',
  'tests/browser/glow.picture.test.ts',
  'tests/browser/luminance.picture.test.ts',
  'tests/browser/cuts.picture.test.ts',
  'tests/browser/handling.test.ts',
  'tests/browser/accessible.test.ts',
  'tests/browser/scale.test.ts',
  'tests/browser/job.test.ts',
  'tests/browser/faultsOfWorkers.test.ts',
];

/**
 * Starts the files first that take longest: were one of them to start last, all but one core would wait for it at the end.
 * The runner would know by itself only after a whole run on the same machine, and goes by the size of files until then.
 */
export class DearestFirst extends BaseSequencer {
  /** @throws Error where a file that is named as dear is not there */
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { root } = this.ctx.config;
    const missing = DEAREST.filter((path) => !existsSync(join(root, path)));
    if (missing.length > 0) throw new Error(`named as dear, but not there: ${missing.join(', ')}`);
    const rank = ({ moduleId }: TestSpecification): number => {
      const at = DEAREST.indexOf(relative(root, moduleId).split(sep).join('/'));
      return at < 0 ? DEAREST.length : at;
    };
    const sorted = await super.sort(files);
    // Those of a project stay together: its workers have its modules loaded.
    const projects = [...new Set(sorted.map(({ project }) => project))];
    return projects.flatMap((project) =>
      sorted.filter((each) => each.project === project).sort((a, b) => rank(a) - rank(b)),
    );
  }
}
