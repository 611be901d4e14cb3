import { findDeclared } from '../facts/declared.js';
import { isShared, propertiesOf } from '../vocabulary/index.js';
import type { ModelValue } from '../exports/model-schema.js';
import type { ChangeWord, Consequence } from './change.js';

/** What each computed figure moves when it changes; those that parts and panels tell themselves stay on the drawing. */
export const consequenceOfComputed: Readonly<Record<string, Consequence>> = {
    'air.exhaust': 'approve', 'air.intake': 'approve', 'air.under_doors': 'approve',
    'bench.build_up': 'drawing', 'bench.fit': 'drawing', 'bench.head_clearance': 'approve', 'bench.is_highest': 'drawing', 'bench.ledger.top': 'drawing', 'bench.legs': 'drawing', 'bench.length': 'drawing', 'bench.load_path': 'drawing',
    'bench.lying_places': 'drawing', 'bench.pieces': 'drawing', 'bench.rise': 'drawing', 'bench.seats': 'drawing', 'bench.slat_gap': 'drawing', 'bench.slats': 'drawing', 'bench.span.rail': 'drawing',
    'bench.strength.bearer': 'approve', 'bench.strength.ledger': 'approve', 'bench.strength.ledger_screw': 'approve', 'bench.strength.leg': 'approve', 'bench.strength.rail': 'approve', 'bench.strength.slat': 'approve',
    'door.clear_width': 'approve', 'door.hand': 'order', 'door.hinges_needed': 'order', 'door.over_head': 'drawing', 'door.under_leaf': 'approve',
    'heater.circuit': 'approve', 'heater.clear_positions': 'drawing', 'heater.clearance.above': 'approve', 'heater.clearance.below': 'approve', 'heater.clearance.front': 'approve', 'heater.clearance.side': 'approve',
    'heater.conductor': 'approve', 'heater.current': 'approve', 'heater.declared_volume': 'approve', 'heater.design_current': 'approve', 'heater.device': 'approve', 'heater.effective_volume': 'approve',
    'heater.fastening_height': 'drawing', 'heater.power': 'approve', 'heater.protective_conductor': 'approve', 'heater.run': 'approve', 'heater.sensor_band': 'approve', 'heater.stone_top': 'drawing',
    'heater.voltage_drop': 'approve',
    'room.*.panels': 'drawing', 'room.assembly_headroom': 'approve', 'room.ceiling_thickness': 'drawing', 'room.closing_corner': 'drawing', 'room.inside.depth': 'drawing', 'room.inside.height': 'drawing',
    'room.inside.volume': 'approve', 'room.inside.width': 'drawing', 'room.panel_height': 'drawing', 'room.panel_mass': 'order', 'room.panels': 'drawing', 'room.sitter.elbows': 'drawing', 'room.sitter.height': 'drawing', 'room.sitter.knees': 'drawing', 'room.sitter.lower_leg': 'drawing', 'room.sitter.thigh': 'drawing', 'room.turning_circle': 'drawing', 'room.wall_thickness': 'drawing',
    'air.changes_cold': 'approve', 'air.changes_hot': 'approve', 'air.flow_hot': 'approve', 'air.loss': 'approve', 'door.u_value': 'approve', 'window.u_value': 'approve',
    'room.dew_point_after_ladle': 'approve', 'room.enthalpy_after_ladle': 'approve', 'room.heat_of_ladle': 'approve', 'room.humidity': 'approve', 'room.humidity_after_ladle': 'approve',
    'room.humidity_ratio_after_ladle': 'approve', 'room.transmission_loss': 'approve', 'room.u_value.*': 'approve',
    'bench.slat_gap_dry': 'drawing', 'bench.slat_gap_wet': 'drawing', 'heater.power_needed': 'approve', 'heater.session_cost': 'drawing', 'heater.session_energy': 'drawing', 'heater.warm_up': 'approve',
    'room.barrier_temperature': 'approve', 'room.board_change': 'drawing', 'room.facing_temperature': 'approve', 'room.lining_temperature': 'drawing', 'room.moisture.*': 'drawing', 'room.tongue_left': 'drawing',
    'site.spare_depth': 'drawing', 'site.spare_width': 'drawing',
    'vent.free_area': 'approve', 'vent.gross_area': 'drawing', 'vent.lower_edge': 'drawing', 'vent.role': 'approve', 'window.glass_area': 'drawing', 'window.head': 'drawing',
};

/** @param kind of the block the figure is about */
export function computedConsequence(kind: string, path: string): Consequence {
    const declared = findDeclared(kind, path.split('.').slice(1).join('.'));
    return (declared && consequenceOfComputed[`${kind}.${declared.path}`]) ?? 'drawing';
}

/** Blocks that stand for something bought, and those whose facts an electrician or an authority looks at. */
const bought: readonly string[] = ['door', 'window', 'heater', 'light', 'sensor', 'control', 'thermometer', 'sign', 'fitting', 'receptacle'];
const approved: readonly string[] = ['decision', 'circuit', 'segment', 'vent', 'control', 'sensor', 'sign', 'receptacle', 'sign_off'];
const approvedOfSite: readonly string[] = ['supply', 'capacity', 'ambient', 'floor'];
/** Facts that are words for people only. */
const isNote = (key: string): boolean => /^(note|edition|drawn_by|measured_by|measured_on|doc|species|grade)$/.test(key);

/** What follows from a fact of the job; what it drags along stands in rows of its own. */
export function givenConsequence(kind: string, path: string, value: ModelValue): Consequence {
    // A vent is a hole in a panel.
    if (kind === 'vent' && (value.kind === 'block' || value.kind === 'length' || /\.wall$/.test(path))) return 'cut';
    if (value.kind === 'block') return bought.includes(kind) ? 'order' : approved.includes(kind) ? 'approve' : 'drawing';
    const key = keyOf(path, kind);
    if (value.kind === 'reference') return isCatalogueReference(kind, key) ? 'order' : 'drawing';
    if (key === 'rules') return 'approve';
    if (kind === 'site' && approvedOfSite.includes(key)) return 'approve';
    const isPlace = value.kind === 'length' || /\.wall$/.test(path);
    return approved.includes(kind) && !isNote(key) && (!isPlace || kind === 'segment') ? 'approve' : 'drawing';
}

/** What a heater's manual asks of the room and its circuit, not what the heater is. */
const isOfManual = (key: string): boolean => /^(manual|volume|clear_\w+|room_height|max_device|min_conductor|connection_wire|sensor\w*|control|limiter|timer|surface_limit|listed_with|circuits|guard|guard_offset)$/.test(key);

/** What follows from another catalogue entry: it is bought, unless only words changed, or what its manual asks for. */
export function catalogueConsequence(kind: string, path: string, value: ModelValue): Consequence {
    const key = keyOf(path, kind);
    if (value.kind === 'block') return 'order';
    return isNote(key) ? 'drawing' : kind === 'heater_model' && isOfManual(key) ? 'approve' : 'order';
}

/** The fact a path ends in, without the piece of its value. */
function keyOf(path: string, kind: string): string {
    const words = path.split('.');
    const known = propertiesOf(kind);
    return words.slice(1).findLast(word => known.has(word)) ?? words.at(-1) ?? '';
}

const isCatalogueReference = (kind: string, key: string): boolean => propertiesOf(kind).get(key)?.property.type.refersTo?.some(isShared) === true;

const onDrawing: readonly ChangeWord[] = ['moved', 're-marked', 'noted otherwise', 'renamed'];
/** Of a part or panel: what only moved or has another mark is not cut again. */
export const woodConsequence = (says: readonly ChangeWord[]): Consequence => says.every(word => onDrawing.includes(word)) ? 'drawing' : says.every(word => word === 'other mass' || onDrawing.includes(word)) ? 'order' : 'cut';
