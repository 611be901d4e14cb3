import type { Rule } from './rule.js';
import { airRules } from './air/index.js';
import { benchRules } from './bench/index.js';
import { climateRules } from './climate/index.js';
import { electricalRules } from './electrical/index.js';
import { heaterRules } from './heater/index.js';
import { jobRules } from './job/index.js';
import { openingRules } from './opening/index.js';
import { shellRules } from './shell/index.js';
import { signingRules } from './signing/index.js';
import { siteRules } from './site/index.js';

/** Every rule, family by family; tests/rules/registry.test.ts fails when a rule file is missing here. */
export const allRules: readonly Rule[] = [...jobRules, ...siteRules, ...shellRules, ...openingRules, ...benchRules, ...heaterRules, ...electricalRules, ...airRules, ...climateRules, ...signingRules];
export const ruleById = (id: string): Rule | undefined => allRules.find(rule => rule.id === id);
