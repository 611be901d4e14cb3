import type { Rule } from '../rule.js';
import { slatsDoNotFit } from './slats-do-not-fit.js';

/** Rules of this family, by id. */
export const benchRules: readonly Rule[] = [slatsDoNotFit];
