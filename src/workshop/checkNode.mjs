/** The oldest Node that the build tool runs on. */
const OLDEST = [20, 19];

/** Ends the process with one sentence when Node is older than the tools need. */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1])) return;
  console.error(
    `Standclear needs Node ${OLDEST.join('.')} or newer, but this is Node ${process.versions.node}: install a newer one from nodejs.org and run the same command again.`,
  );
  process.exit(1);
}
