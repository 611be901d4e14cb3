import type { Citation } from '../core/citation.js';
import { inInches, plus, zero, type Length } from '../core/length.js';
import { computeStrength } from '../engines/strength/compute-strength.js';
import { screwDiameters } from '../engines/strength/support-checks.js';
import type { BenchMember, BenchStrengthInput, LedgerScrewValues, StrengthInput, StrengthLoad, TimberValues } from '../engines/strength/strength-input.js';
import type { StrengthResult } from '../engines/strength/strength-result.js';
import type { Block } from '../model/block.js';
import { goodPractice } from '../rule-sets/good-practice.js';
import { benchLoads, strictest, type LoadCase, type RuleSet } from '../rule-sets/index.js';
import { given } from './catalogue-values.js';
import type { AssembledBenches } from './benches.js';
import { remembered } from './remember.js';
import type { RoomShell } from './room.js';

const strengthOf = remembered('strength', computeStrength);
const pascalsPerPsi = 6894.757293168361;

/** Strength of the benches, with the loads and the temperature it was worked out for. */
export interface AssembledStrength {
    readonly input: StrengthInput;
    readonly result: StrengthResult;
    readonly loads: readonly LoadCase[];
    /** Who says how hot the wood becomes. */
    readonly heat: Citation;
}

/** Members of a bench and the fact of its build that names their stock. */
export const memberStock = { slat: 'slat', bearer: 'bearer', rail: 'rail', ledger: 'ledger', leg: 'leg' } as const satisfies Readonly<Record<BenchMember, string>>;

export function assembleStrength(ruleSets: readonly RuleSet[], { input: { inside, benches: stated }, result: { benches }, blocks }: AssembledBenches, shell: RoomShell): AssembledStrength {
    const loads = benchLoads(ruleSets);
    const hottest = strictest(ruleSets, 'thermostat.air-temperature') ?? strictest([...ruleSets, goodPractice], 'climate.temperature-maximum');
    const inputs = benches.flatMap((layout): BenchStrengthInput[] => {
        const block = blocks.get(layout.name);
        const build = block?.values.build?.value.block;
        const sections = stated.find(({ name }) => name === layout.name)?.build;
        if (!block || !build || !sections) return [];
        const screw = ledgerScrew(build, shell);
        return [{
            layout, build: { slat: sections.slat, bearer: sections.bearer, rail: sections.rail, ledger: sections.ledger, leg: sections.leg },
            timbers: timbersOf(build), ...(screw && { screw }), isWet: block.values.is_often_wet?.value ?? false,
            loads: loads.filter(({ on }) => on === 'every bench' || layout.isAccessible).map(loadOf),
        }];
    });
    const input: StrengthInput = { inside, benches: inputs, serviceC: hottest?.figure.celsius ?? 100 };
    return { input, result: strengthOf(input), loads, heat: hottest?.clause.citation ?? { kind: 'practice', text: 'Bathing at up to 100 °C.' } };
}

const loadOf = ({ id, title, shape, duration }: LoadCase): StrengthLoad => ({
    id, title, duration,
    shape: shape.kind === 'even' ? shape : {
        along: inInches(shape.footprint.along), across: inInches(shape.footprint.across), poundsForce: shape.poundsForce,
        ...(shape.kind === 'row' ? { kind: 'row', pitch: inInches(shape.pitch) } : { kind: 'moving' }),
    },
});

function timbersOf(build: Block<'bench_build'>): BenchStrengthInput['timbers'] {
    const found = (Object.keys(memberStock) as BenchMember[]).flatMap(member => {
        const timber = timberOf(build.values[memberStock[member]]?.value.block);
        return timber ? [[member, timber] as const] : [];
    });
    return Object.fromEntries(found);
}

/** The design values of a stock; nothing while it names none. */
export function timberOf(stock: Block<'stock'> | undefined): TimberValues | undefined {
    const link = stock?.values.timber?.value;
    const values = link?.block?.values;
    if (!link || !values) return undefined;
    const psi = (value: { readonly value: number } | undefined): number | undefined => value && value.value > 0 ? value.value / pascalsPerPsi : undefined;
    const gravity = values.specific_gravity?.value;
    return {
        name: link.name, sizeRule: values.size_factor?.value ?? 'none',
        ...given({
            bendingPsi: psi(values.bending), shearPsi: psi(values.shear), compressionPerpendicularPsi: psi(values.compression_perpendicular),
            compressionParallelPsi: psi(values.compression_parallel), elasticityPsi: psi(values.elasticity), stabilityModulusPsi: psi(values.stability_modulus),
            specificGravity: gravity !== undefined && gravity > 0 ? gravity : undefined,
        }),
    };
}

/** The screw of the ledgers with what it passes and what it is driven into: the frame of the wall panels. */
function ledgerScrew(build: Block<'bench_build'>, { base, system }: RoomShell): LedgerScrewValues | undefined {
    const link = build.values.ledger_screw?.value;
    const values = link?.block?.values;
    if (!link || !values?.length) return undefined;
    const gap = base.wallLayers.left.filter(({ role }) => role === 'lining' || role === 'air_gap').reduce<Length>((sum, { thickness }) => plus(sum, thickness), zero);
    const inch = (length: { readonly value: Length } | undefined): number | undefined => length && length.value > 0 ? inInches(length.value) : undefined;
    return {
        name: link.name, length: inInches(values.length.value), gap: inInches(gap),
        ...screwDiameters(inch(values.diameter), inch(values.root_diameter), values.gauge?.value),
        ...given({ frameGravity: timberOf(system.values.frame?.value.block)?.specificGravity }),
    };
}
