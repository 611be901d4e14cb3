import type { Rule } from '../rule.js';

/** Rules of this family, by id. */
export const shellRules: readonly Rule[] = [];
