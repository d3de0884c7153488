/** What is known of a condition while building; null when only the card's compiler knows. */
type Known = boolean | null;

interface Fork {
  /** Whether one of its branches is known to hold, so that none after it does. */
  isDecided: boolean;
  /** Whether the branch at hand is left out. */
  isOut: boolean;
  /** How many of its branches have stayed with their conditions. */
  asked: number;
}

/**
 * Takes out of a shader what is under conditions that never hold, as its compiler would later, with comments, blank
 * lines and what lines are indented by. What cannot be decided stays as it is written.
 * @param never names that are never defined, and counts that are always 0
 * @throws an error where forks are not closed as they were opened
 */
export function foldShader(shader: string, never: ReadonlySet<string>): string {
  const kept: string[] = [];
  const forks: Fork[] = [];
  const isOut = (): boolean => forks.some((fork) => fork.isOut);
  for (const line of withoutComments(shader).split('\n')) {
    const text = line.trim();
    const [, word, condition = ''] = /^#\s*(ifdef|ifndef|if|elif|else|endif)\b(.*)$/.exec(text) ?? [];
    if (!word) {
      if (text !== '' && !isOut()) kept.push(text);
      continue;
    }
    if (word.startsWith('if')) {
      const isWithin = isOut();
      const fork = { isDecided: false, isOut: false, asked: 0 };
      forks.push(fork);
      const known = knownOf(word, condition, never);
      take(fork, known);
      if (known === null && !isWithin) kept.push(text);
      continue;
    }
    const fork = forks.at(-1);
    if (!fork) throw new Error(`foldShader: #${word} without an #if`);
    if (word === 'endif') {
      forks.pop();
      if (fork.asked > 0 && !isOut()) kept.push(text);
      continue;
    }
    const asked = fork.asked;
    const known = word === 'else' ? true : knownOf('if', condition, never);
    const isPossible = take(fork, known);
    if (!isPossible || forks.slice(0, -1).some((each) => each.isOut)) continue;
    if (known === null) kept.push(asked > 0 ? text : `#if ${condition.trim()}`);
    else if (asked > 0) kept.push('#else');
  }
  if (forks.length > 0) throw new Error('foldShader: an #if without its #endif');
  return kept.join('\n');
}

/** Goes over to the next branch of a fork; false where that one is left out. */
function take(fork: Fork, known: Known): boolean {
  const isPossible = !fork.isDecided && known !== false;
  fork.isOut = !isPossible;
  if (isPossible && known === null) fork.asked += 1;
  if (known === true) fork.isDecided = true;
  return isPossible;
}

function knownOf(word: string, condition: string, never: ReadonlySet<string>): Known {
  if (word === 'if') return worthOf(condition, never);
  if (!never.has(condition.trim())) return null;
  return word === 'ifndef';
}

/** Works a condition out from the inside, in signs: 0 never, 1 always, ? not known. */
function worthOf(condition: string, never: ReadonlySet<string>): Known {
  let signs = condition
    .replace(/defined\s*\(\s*(\w+)\s*\)|defined\s+(\w+)/g, (_, first, second) =>
      never.has(first ?? second) ? '0' : '?',
    )
    .replace(/\b([A-Z]\w*)\s*>\s*0(?![\w.])/g, (_, name) => (never.has(name) ? '0' : '?'))
    .replace(/[^()!&|?01\s][^()!&|]*|[?01]\s*[^()!&|\s][^()!&|]*/g, '?')
    .replace(/\s/g, '');
  for (let before = ''; before !== signs; ) {
    before = signs;
    signs = signs
      .replace(/\(([01?])\)/g, '$1')
      .replace(/!([01?])/g, (_, value) => (value === '?' ? '?' : value === '0' ? '1' : '0'))
      .replace(/([01?])&&([01?])/, (both) => (both.includes('0') ? '0' : both.includes('?') ? '?' : '1'));
    if (before !== signs) continue;
    signs = signs.replace(/([01?])\|\|([01?])/, (both) =>
      both.includes('1') ? '1' : both.includes('?') ? '?' : '0',
    );
  }
  return signs === '0' ? false : signs === '1' ? true : null;
}

function withoutComments(shader: string): string {
  return shader.replace(/\/\*[\s\S]*?\*\//g, ' ').replace(/\/\/.*$/gm, '');
}
