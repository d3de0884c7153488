import { spawnSync } from 'node:child_process';
import { HOUSE } from './house.mjs';

/**
 * Runs a program in the repository's root, with its output shown.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {{ env?: NodeJS.ProcessEnv, shell?: boolean }} [options]
 * @returns {boolean} whether it ended without an error
 */
export function run(program, args, options = {}) {
  const { env, shell = false } = options;
  const ended = spawnSync(program, args, {
    cwd: HOUSE,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell,
  });
  if (ended.error) console.error(`Could not run ${program}: ${ended.error.message}`);
  return ended.status === 0;
}

/**
 * Runs a script of an installed package with this same Node.
 * @param {string} script path below node_modules
 * @param {readonly string[]} args
 * @param {{ env?: NodeJS.ProcessEnv }} [options]
 * @returns {boolean} whether it ended without an error
 */
export function runTool(script, args, options = {}) {
  return run(process.execPath, [`node_modules/${script}`, ...args], options);
}
