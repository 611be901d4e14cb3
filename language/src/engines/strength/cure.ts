import type { Length } from '../../core/length.js';
import { inches, mm } from '../../core/length.js';
import type { BenchBuild, BenchesInput, BenchStock } from '../benches/bench-input.js';
import { computeBenches } from '../benches/compute-benches.js';
import { computeStrength } from './compute-strength.js';
import type { BenchMember, BenchStrengthInput, StrengthInput, TimberValues } from './strength-input.js';
import { governingCheck, type StrengthMember, type StrengthResult } from './strength-result.js';

/** A stock a member could be made of instead. */
export interface StockOption extends BenchStock { readonly timber: TimberValues }

/** One change of a bench build that cures a member, found by working the benches out with it. */
export type Cure =
    | { readonly change: 'bearer_spacing' | 'leg_spacing' | 'ledger_screw_spacing'; readonly length: Length; readonly legs: number; readonly utilisation: number }
    | { readonly change: 'ledger_screw_rows'; readonly count: number; readonly utilisation: number }
    | { readonly change: 'stock'; readonly member: BenchMember; readonly option: StockOption; readonly utilisation: number };

export interface CureSearch {
    readonly benches: BenchesInput;
    readonly strength: StrengthInput;
    /** The bench whose member fails, and the member. */
    readonly bench: string;
    readonly member: StrengthMember;
    /** Stocks to try, lightest first. */
    readonly options: readonly StockOption[];
    readonly isMetric: boolean;
}

interface Trial { readonly build: Partial<BenchBuild>; readonly timbers?: Partial<Record<BenchMember, TimberValues>>; readonly cure: (legs: number, utilisation: number) => Cure }

/** Spacings to try, widest first: whole steps a shop would set, down to a hand or a seat. */
const steps = (from: Length, step: Length, least: Length): readonly Length[] => {
    const list: Length[] = [];
    for (let length = (Math.ceil(from / step) - 1) * step; length >= least; length -= step) list.push(length as Length);
    return list;
};

/**
 * The change that cures a member: each is tried on the whole build, the benches are laid out and worked out again, and the first that brings the member to what it can
 * carry and lays no other member low is taken. Changes of spacing come first, the widest that does; then stronger stocks, the lightest that does.
 * @returns nothing when no single change cures it
 */
export function findCure(search: CureSearch): Cure | undefined {
    const failing = utilisations(computeStrength(search.strength));
    const build = search.benches.benches.find(({ name }) => name === search.bench)?.build;
    if (!build) return undefined;
    for (const trials of ladders(search, build)) {
        const found = firstThatCures(trials, trial => cured(search, build, trial, failing));
        if (found) return found;
    }
    return undefined;
}

/** A ladder of trials, each stronger than the one before: halved, as a stronger one never does worse; from there on the first that harms no other member. */
function firstThatCures(trials: readonly Trial[], test: (trial: Trial) => Outcome | undefined): Cure | undefined {
    const last = trials.at(-1);
    if (!last || !test(last)) return undefined;
    let [low, high] = [0, trials.length - 1];
    while (low < high) {
        const middle = Math.floor((low + high) / 2);
        const trial = trials[middle];
        if (trial && test(trial)) high = middle; else low = middle + 1;
    }
    for (const trial of trials.slice(low, low + mostSteps)) {
        const outcome = test(trial);
        if (outcome && !outcome.isHarmful) return outcome.cure;
    }
    return undefined;
}
interface Outcome { readonly cure: Cure; readonly isHarmful: boolean }
/** How far down a ladder is looked for a change that harms nothing else. */
const mostSteps = 4;

function ladders({ member, options, isMetric }: CureSearch, build: BenchBuild): readonly (readonly Trial[])[] {
    const inch = isMetric ? mm(25) : inches(1);
    const step = (count: number): Length => inch * count as Length;
    const spacing = (change: 'bearer_spacing' | 'leg_spacing' | 'ledger_screw_spacing', key: 'bearerSpacing' | 'legSpacing' | 'ledgerScrewSpacing', from: Length, by: Length, least: Length): readonly Trial[] =>
        steps(from, by, least).map(length => ({ build: { [key]: length }, cure: (legs, utilisation) => ({ change, length, legs, utilisation }) }));
    const stocks = (of: BenchMember): readonly Trial[] => options
        .filter(({ section }) => section.thickness >= build[of].section.thickness && section.width >= build[of].section.width && (section.thickness > build[of].section.thickness || section.width > build[of].section.width))
        .map(option => ({ build: { [of]: option }, timbers: { [of]: option.timber }, cure: (_legs, utilisation) => ({ change: 'stock', member: of, option, utilisation }) }));
    const bearers = spacing('bearer_spacing', 'bearerSpacing', build.bearerSpacing, step(2), step(6));
    const legs = spacing('leg_spacing', 'legSpacing', build.legSpacing ?? inches(72), step(6), step(18));
    const rows = [2, 3].filter(count => count > (build.ledgerScrewRows ?? 1)).map((count): Trial => ({ build: { ledgerScrewRows: count }, cure: (_legs, utilisation) => ({ change: 'ledger_screw_rows', count, utilisation }) }));
    const screws = spacing('ledger_screw_spacing', 'ledgerScrewSpacing', build.ledgerScrewSpacing ?? inches(16), step(2), step(4));
    switch (member) {
        case 'slat': return [bearers, stocks('slat')];
        case 'bearer': return [bearers, stocks('bearer')];
        case 'rail': return [legs, stocks('rail'), stocks('leg')];
        case 'leg': return [legs, stocks('leg')];
        case 'ledger': return [screws, legs, stocks('ledger')];
        case 'ledger screw': return [screws, rows, legs];
    }
}

/** Works the benches out with a trial in every bench of the build. */
function cured({ benches, strength, bench, member }: CureSearch, build: BenchBuild, trial: Trial, before: ReadonlyMap<string, number>): Outcome | undefined {
    const made = { ...benches, benches: benches.benches.map(one => one.build.name === build.name ? { ...one, build: { ...one.build, ...trial.build } } : one) };
    const laidOut = computeBenches(made);
    const input: StrengthInput = {
        ...strength,
        benches: strength.benches.flatMap((one): BenchStrengthInput[] => {
            const layout = laidOut.benches.find(({ name }) => name === one.layout.name);
            const own = made.benches.find(({ name }) => name === one.layout.name);
            if (!layout || !own) return [];
            return [{ ...one, layout, build: own.build, timbers: own.build.name === build.name ? { ...one.timbers, ...trial.timbers } : one.timbers }];
        }),
    };
    if (input.benches.length < strength.benches.length || laidOut.problems.some(({ kind }) => kind === 'span-without-leg')) return undefined;
    const after = utilisations(computeStrength(input));
    const utilisation = after.get(keyOf(bench, member)) ?? Infinity;
    if (utilisation > 1) return undefined;
    return {
        cure: trial.cure(laidOut.benches.find(({ name }) => name === bench)?.legs.length ?? 0, utilisation),
        isHarmful: [...after].some(([key, value]) => value > 1 && value > (before.get(key) ?? 0) + 1e-9),
    };
}

const keyOf = (bench: string, member: StrengthMember): string => `${bench} ${member}`;
const utilisations = ({ benches }: StrengthResult): ReadonlyMap<string, number> =>
    new Map(benches.flatMap(({ bench, members }) => members.map(member => [keyOf(bench, member.member), governingCheck(member)?.utilisation ?? 0] as const)));
