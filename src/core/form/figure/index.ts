export { figureParts } from './figureParts';
export { type Measures, measuresOf } from './proportions';
export { type Whereabouts, whereabouts } from './whereabouts';
