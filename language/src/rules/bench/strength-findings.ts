import { areRulesKnown } from '../../assembly/known.js';
import { showCitation } from '../../core/citation.js';
import { showNumber } from '../../core/show.js';
import type { BenchStrengthInput } from '../../engines/strength/strength-input.js';
import type { Cure } from '../../engines/strength/cure.js';
import type { MemberStrength, StrengthCheck, StrengthMember } from '../../engines/strength/strength-result.js';
import type { Block } from '../../model/block.js';
import type { RuleInput } from '../rule.js';
import { buildOf, placedBenches } from './bench-findings.js';

/** Members in the words of the trade. */
export const memberWords: Readonly<Record<StrengthMember, string>> = { slat: 'slats', bearer: 'cross-bearers', rail: 'rails', ledger: 'ledgers', leg: 'legs', 'ledger screw': 'ledger screws' };

/** A member of a bench with its strength. */
export interface StrengthCase {
    readonly bench: string;
    readonly block: Block<'bench'>;
    readonly build: Block<'bench_build'>;
    readonly input: BenchStrengthInput;
    readonly strength: MemberStrength;
}

/** Every member of every bench that has its place; where a leg is missing that the notch took, what hangs on it is not judged. */
export function strengthCases(input: RuleInput): readonly StrengthCase[] {
    // Which loads apply is said by the rule sets: a line of them that could not be read silences this.
    if (!areRulesKnown(input.job)) return [];
    const { strength, benches } = input.results;
    return placedBenches(input).flatMap(({ block, name }): StrengthCase[] => {
        const build = buildOf(block);
        const [found, given] = [strength?.result.benches.find(({ bench }) => bench === name), strength?.input.benches.find(({ layout }) => layout.name === name)];
        // Slats that do not fill the depth have a finding, and what cures it changes every span.
        if (!build || !found || !given || !given.layout.slats) return [];
        const lacksLeg = benches?.result.problems.some(({ bench, kind }) => bench === name && kind === 'span-without-leg');
        return found.members.filter(({ member }) => !lacksLeg || member === 'slat' || member === 'bearer').map(one => ({ bench: name, block, build, input: given, strength: one }));
    });
}

/** What is measured and what is allowed. */
export function measuredWords({ action, demand, capacity, unit }: StrengthCheck): { readonly is: string; readonly most: string } {
    const figure = (value: number): string => `${showNumber(value, 0)} ${unit}`;
    switch (action) {
        case 'bending': return { is: `reach ${figure(demand)} in bending`, most: figure(capacity) };
        case 'shear': return { is: `reach ${figure(demand)} in shear`, most: figure(capacity) };
        case 'bearing': return { is: `press ${figure(demand)} where they bear`, most: figure(capacity) };
        case 'screw': return { is: `hold ${figure(demand)} each`, most: figure(capacity) };
        case 'deflection': return { is: `bend by 1/${showNumber(1 / demand, 0)} of their span`, most: `1/${showNumber(1 / capacity, 0)}` };
        case 'column': return { is: `take ${showNumber(demand, 2)} times what they carry as columns`, most: '1' };
    }
}

/** The cure as something to do, with the fact of the bench build that says it. */
export function cureWords(cure: Cure | undefined, { show }: RuleInput): string {
    if (!cure) return 'No single change of spacing, section or screws cures it: take a shorter or shallower bench, or another build.';
    const left = `${showNumber(cure.utilisation * 100, 0)} % is taken then`;
    switch (cure.change) {
        case 'bearer_spacing': return `Set the cross-bearers at most ${show(cure.length)} apart (bearer_spacing of the bench build); ${left}.`;
        case 'leg_spacing': return `Set the legs so that at most ${show(cure.length)} is clear between supports (leg_spacing of the bench build), ${cure.legs === 1 ? 'one leg' : `${cure.legs} legs`} in all; ${left}.`;
        case 'ledger_screw_spacing': return `Set the screws of the ledger at most ${show(cure.length)} apart (ledger_screw_spacing of the bench build); ${left}.`;
        case 'ledger_screw_rows': return `Set ${cure.count} screws over one another (ledger_screw_rows of the bench build); ${left}.`;
        case 'stock': {
            const { stock, nominal, section } = cure.option;
            return `Make the ${memberWords[cure.member]} of ${stock ?? nominal ?? 'the same wood'}, ${show(section.thickness)} x ${show(section.width)}${stock === undefined ? ', of the same wood' : ''} (${cure.member} of the bench build); ${left}.`;
        }
    }
}

/** Under which load, and whose it is. */
export function loadWords({ load: id }: StrengthCheck, { results: { strength } }: RuleInput): string {
    const load = strength?.loads.find(one => one.id === id);
    return load ? `${load.title} (${showCitation(load.citation)})` : id;
}
