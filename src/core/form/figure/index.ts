export { figureParts } from './figureParts';
export { measuresOf } from './proportions';
export { whereabouts } from './whereabouts';
