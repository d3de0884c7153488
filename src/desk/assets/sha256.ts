export { sha256Of } from '../../exchange/sha256';
