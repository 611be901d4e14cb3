import { clausesOf, strictest, type Clause } from '../../rule-sets/index.js';
import type { RuleInput } from '../rule.js';
import { electricHeater } from './control-findings.js';

/** The clause that wants a warning notice. One set that wants it is enough: that another exempts its own buildings does not undo it. */
export const noticeDemand = ({ ruleSets }: RuleInput): Clause<'notice.required'> | undefined => clausesOf(ruleSets, 'notice.required').find(({ clause }) => clause.figure.value && !clause.isSetAside)?.clause;
export const letterDemand = ({ ruleSets }: RuleInput): Clause<'notice.letter-height'> | undefined => strictest(ruleSets, 'notice.letter-height', { without: electricHeater })?.clause;
