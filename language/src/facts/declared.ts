import type { BlockKind } from '../vocabulary/index.js';

/** One thing that is computed for every block of a kind, whether or not a given job has it. */
export interface DeclaredFact {
    /** Path below the block's own: `ledger.top`. `*` stands for one word, such as a wall. */
    readonly path: string;
    readonly title: string;
    /** The words it can be, where it is one word. */
    readonly among?: readonly string[];
    readonly is: 'length' | 'area' | 'volume' | 'mass' | 'power' | 'current' | 'voltage' | 'number' | 'words' | 'flag' | 'time' | 'temperature';
}

const fact = (path: string, title: string, is: DeclaredFact['is'], among?: readonly string[]): DeclaredFact => ({ path, title, is, ...(among && { among }) });

/** What is computed, by kind of block: for completion, for the reference, and to tell a misspelled name from one that has no value yet. */
export const declaredFacts: Readonly<Partial<Record<BlockKind | 'air', readonly DeclaredFact[]>>> = {
    air: [
        fact('changes_cold', 'air changes an hour, cold room', 'number'),
        fact('changes_hot', 'air changes an hour, hot room', 'number'),
        fact('exhaust', 'free exhaust area', 'area'),
        fact('flow_hot', 'air through the hot room', 'number'),
        fact('intake', 'free intake area', 'area'),
        fact('loss', 'loss by ventilation at bathing temperature', 'power'),
        fact('under_doors', 'area under the doors', 'area'),
    ],
    bench: [
        fact('build_up', 'slat and cross-bearer', 'length'),
        fact('fit', 'how it fits those who are to sit on it', 'words'),
        fact('head_clearance', 'bench top to ceiling lining', 'length'),
        fact('is_highest', 'whether no bench is higher', 'flag'),
        fact('ledger.top', 'ledger top', 'length'),
        fact('legs', 'legs', 'number'),
        fact('length', 'length on its first wall', 'length'),
        fact('load_path', 'load path', 'words', ['end_ledgers', 'back_ledger_and_legs']),
        fact('lying_places', 'places of 72" to lie', 'number'),
        fact('pieces', 'pieces', 'number'),
        fact('rise', 'climb to it', 'length'),
        fact('seats', 'seats of 24"', 'number'),
        fact('slat_gap', 'gap between slats', 'length'),
        fact('slat_gap_dry', 'gap between slats in hot service', 'length'),
        fact('slat_gap_wet', 'gap between slats washed down', 'length'),
        fact('slats', 'slats', 'number'),
        fact('span.rail', 'longest clear span of the front rail', 'length'),
        fact('strength.bearer', 'how much of what the cross-bearers can carry is taken; 1 is all', 'number'),
        fact('strength.ledger', 'how much of what the ledgers can carry is taken; 1 is all', 'number'),
        fact('strength.ledger_screw', 'how much of what the ledger screws can carry is taken; 1 is all', 'number'),
        fact('strength.leg', 'how much of what the legs can carry is taken; 1 is all', 'number'),
        fact('strength.rail', 'how much of what the rails can carry is taken; 1 is all', 'number'),
        fact('strength.slat', 'how much of what the slats can carry is taken; 1 is all', 'number'),
    ],
    door: [
        fact('clear_width', 'clear width', 'length'),
        fact('hand', 'hand', 'words', ['left_hand', 'right_hand']),
        fact('hinges_needed', 'hinges needed', 'number'),
        fact('over_head', 'from the frame to the ceiling', 'length'),
        fact('u_value', 'U-value', 'number'),
        fact('under_leaf', 'air path under the leaf', 'area'),
    ],
    heater: [
        fact('circuit', 'circuit', 'words'),
        fact('clear_positions', 'positions that clear everything', 'words'),
        fact('clearance.above', 'tightest clearance above it', 'length'),
        fact('clearance.below', 'tightest clearance below it', 'length'),
        fact('clearance.front', 'tightest clearance before it', 'length'),
        fact('clearance.side', 'tightest clearance beside it', 'length'),
        fact('conductor', 'circuit conductors', 'words'),
        fact('current', 'current', 'current'),
        fact('declared_volume', 'volume its manual declares', 'words'),
        fact('design_current', 'load the circuit is sized for', 'current'),
        fact('device', 'overcurrent device', 'current'),
        fact('effective_volume', 'volume by the volume method', 'volume'),
        fact('fastening_height', 'upper screws over the floor', 'length'),
        fact('power', 'rated power', 'power'),
        fact('power_needed', 'power needed for the time asked', 'power'),
        fact('protective_conductor', 'equipment ground', 'words'),
        fact('run', 'length of the run', 'length'),
        fact('sensor_band', 'sensor below the ceiling', 'words'),
        fact('session_cost', 'cost of a session', 'words'),
        fact('session_energy', 'electricity of a session', 'number'),
        fact('stone_top', 'top of the stones', 'length'),
        fact('voltage_drop', 'voltage drop', 'number'),
        fact('warm_up', 'time to bathing temperature', 'time'),
    ],
    room: [
        fact('*.panels', 'panels of a wall, left to right seen from inside', 'words'),
        fact('assembly_headroom', 'height needed to put it up', 'length'),
        fact('barrier_temperature', 'coldest barrier when bathing temperature is reached', 'temperature'),
        fact('board_change', 'change of a lining board, shop to service', 'length'),
        fact('ceiling_thickness', 'ceiling thickness', 'length'),
        fact('closing_corner', 'corner closed last', 'words', ['front_left', 'front_right', 'back_left', 'back_right']),
        fact('dew_point_after_ladle', 'dew point after a ladle', 'temperature'),
        fact('enthalpy_after_ladle', 'enthalpy for each kg of dry air after a ladle', 'number'),
        fact('facing_temperature', 'warmest facing after a session', 'temperature'),
        fact('heat_of_ladle', 'heat a ladle takes from the stones', 'number'),
        fact('humidity', 'relative humidity at bathing temperature, before a ladle', 'number'),
        fact('humidity_after_ladle', 'relative humidity after a ladle', 'number'),
        fact('humidity_ratio_after_ladle', 'vapour for each kg of dry air after a ladle', 'number'),
        fact('inside.depth', 'inside depth', 'length'),
        fact('inside.height', 'inside height', 'length'),
        fact('inside.volume', 'inside volume', 'volume'),
        fact('inside.width', 'inside width', 'length'),
        fact('lining_temperature', 'coldest lining when bathing temperature is reached', 'temperature'),
        fact('moisture.*', 'moisture of wood in shop, store, service and washed down', 'number'),
        fact('panel_height', 'wall panel height', 'length'),
        fact('panel_mass', 'mass of the panel layers', 'mass'),
        fact('panels', 'panels', 'number'),
        fact('sitter.elbows', 'breadth at the elbows of the largest meant', 'length'),
        fact('sitter.height', 'sitting height of the largest meant', 'length'),
        fact('sitter.knees', 'back to knee of the largest meant', 'length'),
        fact('sitter.lower_leg', 'sole to hollow of the knee of the smallest meant', 'length'),
        fact('sitter.thigh', 'back to hollow of the knee of the smallest meant', 'length'),
        fact('turning_circle', 'largest circle free on the floor', 'length'),
        fact('tongue_left', 'tongue left in its groove in hot service', 'length'),
        fact('transmission_loss', 'loss through the shell at bathing temperature', 'power'),
        fact('u_value.*', 'U-value of a wall, the ceiling or the floor', 'number'),
        fact('wall_thickness', 'wall thickness', 'length'),
    ],
    site: [
        fact('spare_depth', 'depth to spare on site', 'length'),
        fact('spare_width', 'width to spare on site', 'length'),
    ],
    vent: [
        fact('free_area', 'free area', 'area'),
        fact('gross_area', 'gross area', 'area'),
        fact('lower_edge', 'lower edge over the floor', 'length'),
        fact('role', 'intake or exhaust, by its name where it does not say', 'words', ['intake', 'exhaust']),
    ],
    window: [
        fact('glass_area', 'glass area', 'area'),
        fact('head', 'upper edge of the glass', 'length'),
        fact('u_value', 'U-value', 'number'),
    ],
};

/** A name may be any word, such as `toString`. */
const declaredFor = (kind: string): readonly DeclaredFact[] => Object.hasOwn(declaredFacts, kind) ? declaredFacts[kind as BlockKind] ?? [] : [];
export const declaredUnder = (kind: string): readonly string[] => declaredFor(kind).filter(({ path }) => !path.includes('*')).map(({ path }) => path);
/** What is declared under a path below a block of this kind. */
export function findDeclared(kind: string, path: string): DeclaredFact | undefined {
    const words = path.split('.');
    return declaredFor(kind).find(declared => {
        const pattern = declared.path.split('.');
        // A second run of a bench has its own figures: length_2.
        return pattern.length === words.length && pattern.every((word, i) => word === '*' || word === (words[i] ?? '').replace(/_\d+$/, '') || word === words[i]);
    });
}
/** The words a declared fact can be; none for one that is a text to read, nothing for a figure. */
export const wordsOfDeclared = (kind: string, path: string): readonly string[] | undefined => { const found = findDeclared(kind, path); return found?.is === 'words' ? found.among ?? [] : undefined; };
export const isDeclared = (kind: string, path: string): boolean => findDeclared(kind, path) !== undefined;
