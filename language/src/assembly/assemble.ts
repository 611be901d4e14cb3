import { boxOnWall, interval, shift, type Box, type InsideSize, type Wall } from '../core/geometry.js';
import { sum, zero, type Length } from '../core/length.js';
import { checkZones, zoneOf, zoneSolids, type ZonedEquipment } from '../engines/electrical/index.js';
import { ceilingMouldings } from '../engines/fittings/ceiling-moulding.js';
import { roomThings, type Thing } from '../engines/fittings/things.js';
import { receptaclesInside, signFacts } from '../engines/heater/controls.js';
import type { FloorShape } from '../engines/benches/bench-input.js';
import type { BenchLayout } from '../engines/benches/bench-result.js';
import type { Part } from '../engines/parts/part.js';
import type { BasePlate } from '../engines/shell/base-plates.js';
import { shellParts } from '../engines/shell/parts.js';
import { computeShell } from '../engines/shell/shell.js';
import type { ShellInput, ShellLayer, WallFastening } from '../engines/shell/shell-input.js';
import type { Footing } from '../engines/site/floor.js';
import type { Job } from '../model/job.js';
import { electricalFamily, type RuleSet } from '../rule-sets/index.js';
import { floorFacts } from '../engines/site/floor.js';
import { freeFloor } from './access.js';
import { assembleAir } from './air.js';
import { assembleBenches, benchFastenings, benchOpenings, benchThings } from './benches.js';
import { given, stockOf } from './catalogue-values.js';
import { assembleClimate } from './climate.js';
import { assembleCircuits } from './circuits.js';
import { assembleFittings, type AssembledFitting } from './fittings.js';
import { judgeHeater } from './heater-judgement.js';
import { assembleHeaters, type AssembledHeater } from './heaters.js';
import { modelFingerprint } from './model-fingerprint.js';
import { nameBlocks } from './naming.js';
import { once } from './once.js';
import { assembleDoors, assembleWindows, shellOpenings } from './openings.js';
import { remembered } from './remember.js';
import type { Results } from './results.js';
import { roomShell, type RoomShell } from './room.js';
import { assembleSite } from './site.js';
import { assembleStrength } from './strength.js';

const shellOf = remembered('shell', computeShell);

/** Puts a job through the engines. Each part of the result is worked out when it is first read, so one that lacks its input costs nothing. */
export function assemble(job: Job, ruleSets: readonly RuleSet[]): Results {
    const room = once(() => roomShell(job));
    const inside = once(() => room()?.inside);
    const whenInside = <T>(make: (inside: InsideSize) => T, otherwise: T): (() => T) => once(() => { const size = inside(); return size ? make(size) : otherwise; });

    const doors = whenInside(size => assembleDoors(job, size), []);
    const windows = whenInside(size => assembleWindows(job, size), []);
    const heaters = whenInside((size): readonly AssembledHeater[] => { const shell = room(); return shell ? assembleHeaters(job, shell, size) : []; }, []);
    const fittings = whenInside((size): readonly AssembledFitting[] => assembleFittings(job, size, heaters()[0]?.name), []);
    const air = whenInside(size => { const shell = room(); return shell && assembleAir(job, shell, size, doors(), heaters()); }, undefined);
    const benches = whenInside(size => assembleBenches(job, {
        inside: size, keepClear: [], floor: floorShape(job),
        openings: benchOpenings(doors(), windows(), (air()?.vents ?? []).flatMap(({ name, vent }) => vent ? [{ name, kind: 'vent' as const, wall: vent.wall, u: vent.onWall.u, v: vent.onWall.v }] : [])),
    }), undefined);
    const strength = once(() => { const [made, shell] = [benches(), room()]; return made && shell && assembleStrength(ruleSets, made, shell, job.unit); });
    const shell = once(() => {
        const base = room()?.base;
        if (!base) return undefined;
        const size = inside();
        const fastenings: readonly WallFastening[] = [
            ...heaters().flatMap(({ name, heater, zone }): WallFastening[] => heater && zone ? [{ kind: 'fastening-zone', name, wall: heater.wall, zone }] : []),
            ...benchFastenings(benches()?.result.benches ?? []),
        ];
        const input: ShellInput = { ...base, openings: size ? shellOpenings(doors(), windows(), size) : [], fastenings };
        return { input, result: shellOf(input) };
    });
    const climate = whenInside(size => {
        const shellOf = room();
        return shellOf && assembleClimate({
            job, ruleSets, room: shellOf, inside: size, get shell() { return shell()?.result; }, get doors() { return doors(); }, get windows() { return windows(); }, get air() { return air(); }, get heaters() { return heatersWithModels(job); },
        });
    }, undefined);
    const things = whenInside((size): readonly Thing[] => {
        const shellOf = room();
        if (!shellOf) return [];
        return roomThings({
            inside: size, shell: { walls: shellOf.thickness, ceiling: shellOf.ceilingThickness },
            doors: doors().flatMap(({ door }) => door ?? []), windows: windows().flatMap(({ window }) => window ?? []),
            placed: [
                ...benchThings(benches()?.result.benches ?? []), ...(air()?.vents ?? []).flatMap(({ thing }) => thing ?? []),
                ...fittings().flatMap(({ thing }) => thing ?? []), ...heaters().flatMap(heater => heater.things),
            ],
        });
    }, []);
    const floor = whenInside(size => freeFloor(things(), doors(), size), undefined);
    const judged = whenInside(size => heaters().map(heater => judgeHeater(heater, job, ruleSets, {
        inside: size, things: things(), doors: doors(), windows: windows(), fittings: fittings(), isFloorCombustible: isFloorCombustible(job),
    })), []);
    const circuits = once(() => assembleCircuits(job, ruleSets, heatersWithModels(job)));
    const zones = whenInside(size => electricalFamily(ruleSets) === 'iec' ? zonesOf(size, room(), heaters(), fittings()) : undefined, undefined);
    const site = once(() => {
        const [shellOf, made, size] = [room(), shell(), inside()];
        const footings = shellOf && made && size ? footingsOf(made.result.basePlates, benches()?.result.benches ?? [], shellOf.thickness, size) : [];
        return shellOf && made ? assembleSite(job, shellOf, made.result, doors(), footings) : undefined;
    });
    const parts = once((): readonly Part[] => {
        const made = shell();
        return [
            ...(made ? shellParts(made.input, made.result) : []),
            ...doors().flatMap(door => door.parts), ...windows().flatMap(window => window.parts),
            ...(benches()?.result.parts ?? []), ...heaters().flatMap(heater => heater.parts), ...fittings().flatMap(fitting => fitting.parts),
            ...mouldings(job, inside(), doors()[0]?.door?.wall),
        ];
    });
    const fingerprint = once(() => modelFingerprint(job, { parts: parts(), shell: shell() }));
    return {
        get room() { return room(); }, get inside() { return inside(); }, get shell() { return shell(); }, get doors() { return doors(); },
        get windows() { return windows(); }, get benches() { return benches(); }, get strength() { return strength(); }, get heaters() { return judged(); }, get fittings() { return fittings(); },
        get air() { return air(); }, get climate() { return climate(); }, get things() { return things(); }, get circuits() { return circuits(); }, get zones() { return zones(); }, get floor() { return floor(); },
        get site() { return site(); }, get parts() { return parts(); }, get fingerprint() { return fingerprint(); },
        signs: signFacts(nameBlocks(job.signs).flatMap(({ name, block }) => block.values.says ? [{ name, says: block.values.says.value, stands: block.values.stands?.value ?? 'outside', ...given({ letters: block.values.letters?.value }) }] : [])),
        receptaclesInside: receptaclesInside(nameBlocks(job.receptacles).flatMap(({ name, block }) => block.values.stands ? [{ name, stands: block.values.stands.value, ...given({ height: block.values.height?.value }) }] : [])),
    };
}

/** Heaters whose model is known: the circuit does not ask where they hang. */
const heatersWithModels = (job: Job): readonly Pick<AssembledHeater, 'name' | 'block' | 'model'>[] =>
    nameBlocks(job.heaters).flatMap(({ name, block }) => { const model = block.values.model?.value.block; return model ? [{ name, block, model }] : []; });

const isFloorCombustible = (job: Job): boolean => { const floor = job.site?.values.floor?.value; return floor === undefined || floorFacts(floor).isCombustible; };

function floorShape(job: Job): FloorShape {
    const { floor_fall: fall, falls_to: toward } = job.site?.values ?? {};
    return fall && toward && fall.value > 0 ? { kind: 'falls', fall: fall.value, toward: toward.value } : { kind: 'level' };
}

/** Electrical equipment and the zones it stands in. The heater's own parts count as the heater. */
function zonesOf(inside: InsideSize, shell: RoomShell | undefined, heaters: readonly AssembledHeater[], fittings: readonly AssembledFitting[]): Results['zones'] {
    const casing = heaters.find(({ heater }) => heater)?.heater?.casing;
    if (!casing) return undefined;
    const [wall, ceiling] = [coldSide(shell?.base.wallLayers.front), coldSide(shell?.base.ceilingLayers)];
    const equipment = fittings.flatMap(({ name, thing, isElectrical, ratingC, waterDigit, block }): ZonedEquipment[] => {
        if (!thing || !isElectrical) return [];
        const kind = block.kind === 'sensor' ? 'heater' : block.kind === 'light' ? 'light' : thing.kind === 'cable_moulding' ? 'cable' : 'other';
        return [{ name, kind, zones: zoneOf(thing.box, casing, inside, wall, ceiling), ...given({ ratingC, waterDigit }) }];
    });
    return { solids: zoneSolids(casing, inside, wall, ceiling), equipment, ...checkZones(equipment, { isHosed: false }) };
}

/** From the lining face to the cold side of the insulation: what is outside the core does not count. */
const coldSide = (layers: readonly ShellLayer[] = []): Length => sum(...layers.filter(({ role }) => role !== 'sheathing' && role !== 'facing').map(({ thickness }) => thickness));

/** Ceiling mouldings inside; a system that names no stock for them gets none. */
function mouldings(job: Job, inside: InsideSize | undefined, doorWall: Wall | undefined): readonly Part[] {
    const stock = stockOf(job.room?.values.system?.value.block?.values.moulding?.value);
    return inside && stock ? ceilingMouldings({ stock: stock.stock, section: stock.section, inside, ...given({ longest: stock.longest, doorWall }) }) : [];
}

/** Base plates and legs on the floor, from the outside front-left corner of the room. */
function footingsOf(plates: readonly BasePlate[], benches: readonly BenchLayout[], thickness: Readonly<Record<'front' | 'left', Length>>, inside: InsideSize): readonly Footing[] {
    const fromOutside = (name: string, { x, y }: Box): Footing => ({ name, x: shift(x, thickness.left), y: shift(y, thickness.front) });
    return [
        ...plates.map(({ mark, wall, along, across, section }) => fromOutside(mark, boxOnWall(wall, along, interval(zero, section.thickness), across, inside))),
        ...benches.flatMap(({ legs }) => legs.map(({ mark, box }) => fromOutside(mark, box))),
    ];
}
