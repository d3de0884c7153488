import { expose } from 'comlink';
import { HEARING } from '../workers/hearing';
import { linkAnswer } from './linkAnswer';
import type { ShareApi } from './shareApi';

const api: ShareApi = { ...HEARING, link: linkAnswer };

expose(api);
