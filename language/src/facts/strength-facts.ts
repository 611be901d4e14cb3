import { showCitation } from '../core/citation.js';
import { showNumber } from '../core/show.js';
import type { AssembledStrength } from '../assembly/strength.js';
import type { Results } from '../assembly/results.js';
import { hottestPublishedC } from '../engines/strength/adjustment.js';
import { governingCheck, type MemberStrength, type StrengthCheck, type StrengthMember } from '../engines/strength/strength-result.js';
import { isKind, type Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import { amountFact } from './fact.js';
import type { FactProvider } from './facts-tree.js';

/** Members as facts name them, and the words people use. */
const words: Readonly<Record<StrengthMember, { readonly path: string; readonly plural: string; readonly stock: 'slat' | 'bearer' | 'rail' | 'ledger' | 'leg' | 'ledger_screw' }>> = {
    slat: { path: 'slat', plural: 'slats', stock: 'slat' }, bearer: { path: 'bearer', plural: 'cross-bearers', stock: 'bearer' }, rail: { path: 'rail', plural: 'rails', stock: 'rail' },
    ledger: { path: 'ledger', plural: 'ledgers', stock: 'ledger' }, leg: { path: 'leg', plural: 'legs', stock: 'leg' }, 'ledger screw': { path: 'ledger_screw', plural: 'ledger screws', stock: 'ledger_screw' },
};

/** `⟨bench⟩.strength.…`: how much of its strength each member uses, with the load, the formula, its inputs and their sources. */
export function strengthFacts(_job: Job, results: Results): readonly FactProvider[] {
    const { benches } = results;
    if (!benches) return [];
    return benches.result.benches.flatMap(({ name }): FactProvider[] => {
        const build = benches.blocks.get(name)?.values.build;
        const made = build?.value.block?.values;
        return (Object.keys(words) as StrengthMember[]).map(member => {
            const { path, plural, stock } = words[member];
            const found = (): MemberStrength | undefined => results.strength?.result.benches.find(({ bench }) => bench === name)?.members.find(one => one.member === member);
            return amountFact(`${name}.strength.${path}`, `how much of what the ${plural} can carry is taken`, '', () => { const one = found(); return one && governingCheck(one)?.utilisation; }, () => {
                const check = (one => one && governingCheck(one))(found());
                const { strength } = results;
                const load = strength?.loads.find(({ id }) => id === check?.load);
                return {
                    because: [build, made?.[stock], made?.bearer_spacing, made?.leg_spacing], source: load?.citation,
                    how: check && strength && `${showCheck(check)}; ${load?.title ?? check.load} (${load ? showCitation(load.citation) : ''}); ${check.formula}; ${check.figures.map(showFigure).join(', ')}; ${sourceOf(made?.[stock]?.value.block)}; ${showHeat(strength)}`,
                };
            });
        });
    });
}

/** What is asked beside what is there, in words: `bending 920 psi of 1180 psi`. */
export function showCheck({ action, demand, capacity, unit }: StrengthCheck): string {
    if (action === 'deflection') return `deflection 1/${showNumber(1 / demand, 0)} of the span, 1/${showNumber(1 / capacity, 0)} at most`;
    const figure = (value: number): string => unit === '' ? showNumber(value, 2) : `${showNumber(value, 0)} ${unit}`;
    return `${action} ${figure(demand)} of ${figure(capacity)}`;
}
const showFigure = ({ name, value, unit }: StrengthCheck['figures'][number]): string => `${name} = ${showNumber(value, Math.abs(value) < 10 ? 3 : 1)}${unit === '' ? '' : ` ${unit}`}`;

/** Whose design values they are. */
const sourceOf = (block: Block | undefined): string =>
    `design values: ${(block && isKind(block, 'stock') ? block.values.timber?.value.block?.values.source?.value : undefined) ?? 'NDS 2018, chapter 12'}`;

/** How hot the wood is taken to be, and that the factor for it is judged where none is published. */
export const showHeat = ({ input: { serviceC }, heat }: AssembledStrength): string =>
    `wood at ${showNumber(serviceC, 0)} °C (${showCitation(heat)})${serviceC > hottestPublishedC ? `; beyond ${showNumber(hottestPublishedC, 0)} °C no factor is published, and the trend of the Wood Handbook, Table 5-15, is carried on: engineering judgement` : ''}`;
