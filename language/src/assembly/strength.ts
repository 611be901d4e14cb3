import type { Citation } from '../core/citation.js';
import { isMetric, type LengthUnit } from '../core/show.js';
import { inInches, plus, zero, type Length } from '../core/length.js';
import { findCure, type Cure, type StockOption } from '../engines/strength/cure.js';
import { computeStrength } from '../engines/strength/compute-strength.js';
import { screwDiameters } from '../engines/strength/support-checks.js';
import { dressedSection, nominalSizes } from '../engines/parts/lumber.js';
import type { BenchMember, BenchStrengthInput, LedgerScrewValues, StrengthInput, StrengthLoad, TimberValues } from '../engines/strength/strength-input.js';
import type { StrengthMember, StrengthResult } from '../engines/strength/strength-result.js';
import { isKind, type Block } from '../model/block.js';
import { goodPractice } from '../rule-sets/good-practice.js';
import { benchLoads, strictest, type LoadCase, type RuleSet } from '../rule-sets/index.js';
import { given, stockOf } from './catalogue-values.js';
import type { AssembledBenches } from './benches.js';
import { remembered } from './remember.js';
import type { RoomShell } from './room.js';

const strengthOf = remembered('strength', computeStrength);
const cureOf = remembered('strength cure', findCure);
const pascalsPerPsi = 6894.757293168361;

/** Strength of the benches, with the loads and the temperature it was worked out for. */
export interface AssembledStrength {
    readonly input: StrengthInput;
    readonly result: StrengthResult;
    readonly loads: readonly LoadCase[];
    /** Who says how hot the wood becomes. */
    readonly heat: Citation;
    /** The single change of its bench build that cures a member, searched for when it is asked. */
    readonly cure: (bench: string, member: StrengthMember) => Cure | undefined;
}

/** Members of a bench and the fact of its build that names their stock. */
export const memberStock = { slat: 'slat', bearer: 'bearer', rail: 'rail', ledger: 'ledger', leg: 'leg' } as const satisfies Readonly<Record<BenchMember, string>>;

export function assembleStrength(ruleSets: readonly RuleSet[], { input: benchesInput, result: { benches }, blocks }: AssembledBenches, shell: RoomShell, unit: LengthUnit): AssembledStrength {
    const { inside, benches: stated } = benchesInput;
    const loads = benchLoads(ruleSets);
    const hottest = strictest(ruleSets, 'thermostat.air-temperature') ?? strictest([...ruleSets, goodPractice], 'climate.temperature-maximum');
    const inputs = benches.flatMap((layout): BenchStrengthInput[] => {
        const block = blocks.get(layout.name);
        const build = block?.values.build?.value.block;
        const sections = stated.find(({ name }) => name === layout.name)?.build;
        if (!block || !build || !sections) return [];
        const screw = ledgerScrew(build, shell);
        return [{
            layout, build: { slat: sections.slat, bearer: sections.bearer, rail: sections.rail, ledger: sections.ledger, leg: sections.leg, ...given({ ledgerScrewSpacing: sections.ledgerScrewSpacing, ledgerScrewRows: sections.ledgerScrewRows }) },
            timbers: timbersOf(build), ...(screw && { screw }), isWet: block.values.is_often_wet?.value ?? false,
            loads: loads.filter(({ on }) => on === 'every bench' || layout.isAccessible).map(loadOf),
        }];
    });
    const input: StrengthInput = { inside, benches: inputs, serviceC: hottest?.figure.celsius ?? 100 };
    const cure = (bench: string, member: StrengthMember): Cure | undefined => {
        const build = blocks.get(bench)?.values.build?.value.block;
        return build && cureOf({ benches: benchesInput, strength: input, bench, member, options: stockOptions(build, member), isMetric: isMetric(unit) });
    };
    return { input, result: strengthOf(input), loads, cure, heat: hottest?.clause.citation ?? { kind: 'practice', text: 'Bathing at up to 100 °C.' } };
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

/** Stocks to try for a member: those the build names, and dressed sizes of the same wood; lightest first. */
function stockOptions(build: Block<'bench_build'>, member: StrengthMember): readonly StockOption[] {
    if (member === 'ledger screw') return [];
    const own = timberOf(build.values[memberStock[member]]?.value.block);
    const named = Object.values(memberStock).flatMap((key): StockOption[] => {
        const link = build.values[key]?.value;
        const [stock, timber] = [stockOf(link), timberOf(link?.block)];
        return stock && timber ? [{ stock: stock.stock, section: stock.section, timber, ...(stock.nominal && { nominal: stock.nominal }) }] : [];
    });
    const sizes = nominalSizes.flatMap((nominal): StockOption[] => { const section = dressedSection(nominal); return own && section ? [{ nominal, section, timber: own }] : []; });
    const all = [...named, ...sizes].filter((option, i, list) => list.findIndex(({ section }) => section.thickness === option.section.thickness && section.width === option.section.width) === i);
    return all.sort((a, b) => a.section.thickness - b.section.thickness || a.section.width - b.section.width);
}

/** The screw of the ledgers with what it passes and what it is driven into: the frame of the wall panels. */
function ledgerScrew(build: Block<'bench_build'>, { base, system }: RoomShell): LedgerScrewValues | undefined {
    const link = build.values.ledger_screw?.value;
    const values = link?.block?.values;
    if (!link || !values?.length) return undefined;
    const thickness = (role: string): number => inInches(base.wallLayers.left.filter(layer => layer.role === role).reduce<Length>((sum, layer) => plus(sum, layer.thickness), zero));
    const lining = system.values.lining?.value.of.block;
    const inch = (length: { readonly value: Length } | undefined): number | undefined => length && length.value > 0 ? inInches(length.value) : undefined;
    return {
        name: link.name, length: inInches(values.length.value), lining: thickness('lining'), gap: thickness('air_gap'),
        ...screwDiameters(inch(values.diameter), inch(values.root_diameter), values.gauge?.value),
        ...given({ frameGravity: timberOf(system.values.frame?.value.block)?.specificGravity, liningGravity: lining && isKind(lining, 'stock') ? timberOf(lining)?.specificGravity : undefined }),
    };
}
