import type { Rule } from '../rule.js';
import { decisionAgainstText } from './decision-against-text.js';
import { decisionSettlesNothing } from './decision-settles-nothing.js';
import { textsDisagree } from './texts-disagree.js';

/** Rules of this family, by id. */
export const jobRules: readonly Rule[] = [decisionAgainstText, decisionSettlesNothing, textsDisagree];
