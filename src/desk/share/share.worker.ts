import { expose } from 'comlink';
import { linkAnswer } from './linkAnswer';
import type { ShareApi } from './shareApi';

const api: ShareApi = { link: linkAnswer };

expose(api);
