import { explain } from '../../core/clearance/explain/explain';
import { explainStore } from './explaining';
import type { FindingKey } from './remediesStore';

/** Has a finding's line of sight drawn; null, and none is. */
export const explainFinding = (about: FindingKey | null): void => explainStore.setState({ about, explain });
