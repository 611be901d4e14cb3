import type { Citation } from '../../core/citation.js';
import { glassCitation, glassConductivity, glassHeat } from './glass.js';
import { iso10456, type SourcedFigure } from './sources.js';
import { speciesOf, woodConductivity, woodHeat, woodSpecificHeat, type Species } from './wood.js';

export type MaterialKind = 'wood' | 'insulation' | 'barrier' | 'board' | 'metal' | 'other';

/** What a catalogue says of a material, in SI: W/(m K), kg/m3, J/(kg K). */
export interface MaterialFacts {
    readonly name: string;
    readonly kind: MaterialKind;
    /** Of a wood, in the catalogue's words. */
    readonly species?: string;
    readonly conductivity?: number;
    readonly densityKgPerM3?: number;
    readonly specificHeat?: number;
}

export interface ThermalMaterial {
    readonly name: string;
    /** W/(m K) */
    readonly conductivity: SourcedFigure;
    readonly densityKgPerM3: SourcedFigure;
    /** J/(kg K) */
    readonly specificHeat: SourcedFigure;
}

/** The state wood is taken at in a hot room in service: per cent of moisture, and degC in the middle of a lining. */
export const serviceMoisture = 6;
const serviceC = 50;
/** Heat of mineral wool, and a density for one the catalogue does not weigh: it holds so little heat that the choice does not show. ISO 10456. */
const mineralWool = { specificHeat: 1030, densityKgPerM3: 40 } as const;
const softwood = { densityKgPerM3: 500 } as const;

/**
 * The figures heat is worked out with: the catalogue's own, else published ones, marked as defaults.
 * @returns nothing for insulation, board, metal and others whose conductivity nobody states: a published table has no figure for "insulation"
 */
export function thermalMaterial(facts: MaterialFacts): ThermalMaterial | undefined {
    const own = (value: number | undefined): SourcedFigure | undefined => value === undefined ? undefined : { value, citation: { kind: 'catalogue', text: `the catalogue, ${facts.name}` } };
    const standIn = (value: number, citation: Citation): SourcedFigure => ({ value, citation, isDefault: true });
    const conductivity = own(facts.conductivity);
    const density = own(facts.densityKgPerM3);
    const heat = own(facts.specificHeat);
    if (facts.kind === 'wood') {
        const species = speciesOf(facts.species ?? facts.name);
        return {
            name: facts.name, densityKgPerM3: density ?? standIn(species ? densityOf(species) : softwood.densityKgPerM3, species ? woodHeat : iso10456('table 3', 'Softwood, 500 kg/m3.')),
            conductivity: conductivity ?? standIn(woodConductivity(species?.gravity ?? (density?.value ?? softwood.densityKgPerM3) / 1120, serviceMoisture), woodHeat),
            specificHeat: heat ?? standIn(woodSpecificHeat(serviceC, serviceMoisture), woodHeat),
        };
    }
    if (!conductivity) return undefined;
    return {
        name: facts.name, conductivity,
        densityKgPerM3: density ?? standIn(mineralWool.densityKgPerM3, iso10456('table 4', 'Mineral wool, 10 to 200 kg/m3.')),
        specificHeat: heat ?? standIn(facts.kind === 'metal' ? 450 : facts.kind === 'insulation' ? mineralWool.specificHeat : 1000, iso10456('tables 3 and 4', 'Mineral wool 1030, steel 450, mineral boards about 1000 J/(kg K).')),
    };
}
/** At 12 % moisture, as sold. */
const densityOf = ({ gravity }: Species): number => gravity * 1120;

const fromTable = (name: string, conductivity: number, densityKgPerM3: number, specificHeat: number): ThermalMaterial => {
    const citation = iso10456('table 3', `Design values of ${name}.`);
    return { name, conductivity: { value: conductivity, citation, isDefault: true }, densityKgPerM3: { value: densityKgPerM3, citation, isDefault: true }, specificHeat: { value: specificHeat, citation, isDefault: true } };
};
/** Design values of ISO 10456 for what a building is made of, by name. */
export const buildingMaterials = {
    concrete: fromTable('concrete', 2, 2400, 1000), tile: fromTable('ceramic tile', 1.3, 2300, 840), vinyl: fromTable('PVC flooring', 0.25, 1700, 1400),
    stone: fromTable('granite', 2.8, 2600, 1000), timber: fromTable('softwood', 0.13, 500, 1600), carpet: fromTable('carpet', 0.06, 200, 1300),
} as const;

/** Glass as EN 673 and ISO 10456 have it. */
export const glass: ThermalMaterial = {
    name: 'glass', conductivity: { value: glassConductivity, citation: glassCitation, isDefault: true },
    densityKgPerM3: { value: glassHeat.densityKgPerM3, citation: glassCitation, isDefault: true }, specificHeat: { value: glassHeat.specificHeat, citation: glassCitation, isDefault: true },
};
