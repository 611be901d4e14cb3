import { walls, type InsideSize } from '../core/geometry.js';
import { inMetres, inSquareMetres, type Length } from '../core/length.js';
import { frameShare, type EnvelopeElement, type EnvelopeLayer } from '../engines/climate/envelope.js';
import { buildingMaterials, glass, thermalMaterial, type MaterialFacts, type ThermalMaterial } from '../engines/climate/materials.js';
import type { ShellLayer } from '../engines/shell/shell-input.js';
import type { ShellPanel, ShellResult } from '../engines/shell/shell-result.js';
import type { Block, Link } from '../model/block.js';
import type { Job } from '../model/job.js';
import { stockOf } from './catalogue-values.js';
import type { AssembledDoor, AssembledWindow } from './openings.js';
import type { RoomShell } from './room.js';

/** Elements of the shell for the heat engines, and what they lack. */
export interface ClimateShell {
    readonly elements: readonly EnvelopeElement[];
    /** Layers no heat can be worked out through, with the part of the system that names them. */
    readonly lacks: readonly { readonly role: ShellLayer['role']; readonly name: string; readonly block?: Block<'material' | 'stock'> }[];
}

/** Stand-ins for what no catalogue entry states: a pane of 6 mm, panes 12 mm apart, a leaf of 1 1/2". */
const usual = { paneM: 0.006, gapM: 0.012, leafM: 0.0381 } as const;

interface Around { readonly aroundC: number; readonly outdoorsC: number; readonly isInTheOpen: boolean }

export function climateShell(job: Job, room: RoomShell, inside: InsideSize, shell: ShellResult | undefined, doors: readonly AssembledDoor[], windows: readonly AssembledWindow[], around: Around): ClimateShell {
    const lacks: { role: ShellLayer['role']; name: string; block?: Block<'material' | 'stock'> }[] = [];
    const frame = stockOf(room.system.values.frame?.value);
    const frameMaterial = room.system.values.frame && materialOf(room.system.values.frame.value);
    const outside = { outsideC: around.isInTheOpen ? around.outdoorsC : around.aroundC, isInTheOpen: around.isInTheOpen };
    const buildUp = (layers: readonly ShellLayer[], links: Links, panels: readonly ShellPanel[]): readonly EnvelopeLayer[] => layers.flatMap((layer): EnvelopeLayer[] => {
        const thicknessM = inMetres(layer.thickness);
        if (layer.role === 'air_gap') return [{ kind: 'air', role: layer.role, thicknessM }];
        if (layer.thickness === 0) return [];
        const link = links[layer.role];
        const material = link && materialOf(link);
        if (!material) { lacks.push({ role: layer.role, name: layer.name, ...(link?.block && { block: link.block }) }); return []; }
        const share = layer.role === 'core' && frame ? meanFrameShare(panels, frame.section.thickness) : 0;
        return [share > 0 && frameMaterial ? { kind: 'bridged', role: layer.role, thicknessM, material, frame: frameMaterial, share } : { kind: 'solid', role: layer.role, thicknessM, material }];
    });
    const { values } = room.system;
    const wallLinks: Links = given({ lining: values.lining?.value.of, core: values.core?.value.of, sheathing: values.sheathing?.value.of, facing: values.facing?.value.of });
    const ceilingLinks: Links = { ...wallLinks, ...given({ core: values.ceiling_core?.value.of, facing: values.ceiling_facing?.value.of }) };
    const elements: EnvelopeElement[] = walls.map(wall => {
        const run = inMetres(wall === 'front' || wall === 'back' ? inside.width : inside.depth);
        const openings = [...doors.flatMap(({ door }) => door?.wall === wall ? [doorArea(door)] : []), ...windows.flatMap(({ window }) => window?.wall === wall ? [inSquareMetres(window.glassArea)] : [])];
        return {
            name: wall, kind: 'wall', ...outside, areaM2: Math.max(0, run * inMetres(inside.height) - openings.reduce((total, area) => total + area, 0)),
            layers: buildUp(room.base.wallLayers[wall], wallLinks, (shell?.walls[wall].panels ?? []).filter(({ opening }) => opening === undefined)),
        };
    });
    const plan = inMetres(inside.width) * inMetres(inside.depth);
    elements.push({ name: 'ceiling', kind: 'ceiling', ...outside, areaM2: plan, layers: buildUp(room.base.ceilingLayers, ceilingLinks, shell?.ceiling?.panels ?? []) });
    elements.push({ name: 'floor', kind: 'floor', outsideC: around.aroundC, isInTheOpen: false, areaM2: plan, layers: floorLayers(job.site?.values.floor?.value) });
    for (const { name, model, door } of doors) {
        if (!door) continue;
        const pane = door.paneArea === undefined ? 0 : inSquareMetres(door.paneArea);
        const leafM = model.values.leaf_thickness ? inMetres(model.values.leaf_thickness.value) : usual.leafM;
        elements.push({ name, kind: 'door', ...outside, areaM2: Math.max(0, doorArea(door) - pane), layers: [{ kind: 'solid', role: 'leaf', thicknessM: leafM, material: buildingMaterials.timber }] });
        if (pane > 0) elements.push({ name: `${name} pane`, kind: 'glass', ...outside, areaM2: pane, ...panes(1) });
    }
    for (const { name, model, window } of windows) if (window) elements.push({ name, kind: 'glass', ...outside, areaM2: inSquareMetres(window.glassArea), ...panes(model.values.panes?.value ?? 1) });
    return { elements, lacks: lacks.filter((lack, i) => lacks.findIndex(other => other.role === lack.role && other.name === lack.name) === i) };
}

type Links = Readonly<Partial<Record<ShellLayer['role'], Link<'material' | 'stock'>>>>;
const given = (links: Readonly<Record<string, Link<'material' | 'stock'> | undefined>>): Links => Object.fromEntries(Object.entries(links).filter(([, link]) => link));

/** A material as the heat engines take it: boards are wood of their species. */
export function materialOf(link: Link<'material' | 'stock'>): ThermalMaterial | undefined {
    const block: Block<'material'> | Block<'stock'> | undefined = link.block;
    if (!block) return undefined;
    const { conductivity, density, specific_heat: specificHeat } = block.values;
    const facts: MaterialFacts = {
        name: link.name, kind: block.kind === 'stock' ? 'wood' : block.values.kind?.value ?? 'other',
        ...(block.kind === 'stock' && block.values.species && { species: block.values.species.value }),
        ...(conductivity && conductivity.value > 0 && { conductivity: conductivity.value }), ...(density && { densityKgPerM3: density.value.kgPerM3 }), ...(specificHeat && { specificHeat: specificHeat.value }),
    };
    return thermalMaterial(facts);
}

/** Of all panels of a wall or the ceiling, by their area. */
function meanFrameShare(panels: readonly ShellPanel[], member: Length): number {
    const faces = panels.map(({ cover, height }) => ({ share: frameShare(inMetres(cover), inMetres(height), inMetres(member)), area: inMetres(cover) * inMetres(height) }));
    const area = faces.reduce((total, face) => total + face.area, 0);
    return area > 0 ? faces.reduce((total, face) => total + face.share * face.area, 0) / area : 0;
}

const doorArea = ({ leafSize }: NonNullable<AssembledDoor['door']>): number => inMetres(leafSize.width) * inMetres(leafSize.height);
const panes = (count: number): Pick<EnvelopeElement, 'layers' | 'glazing'> => ({
    glazing: { panes: Math.max(1, count), paneM: usual.paneM, gapM: usual.gapM },
    layers: Array.from({ length: Math.max(1, count) * 2 - 1 }, (_, i): EnvelopeLayer => i % 2 === 0 ? { kind: 'solid', role: 'pane', thicknessM: usual.paneM, material: glass } : { kind: 'gap', role: 'between panes', thicknessM: usual.gapM }),
});

type Floor = NonNullable<NonNullable<Job['site']>['values']['floor']>['value'];
/** The finish the site names on 100 mm of concrete, or boards on joists; nothing more is known of the building. */
function floorLayers(floor: Floor | undefined): readonly EnvelopeLayer[] {
    const layer = (role: string, thicknessM: number, material: ThermalMaterial): EnvelopeLayer => ({ kind: 'solid', role, thicknessM, material });
    const slab = layer('slab', 0.1, buildingMaterials.concrete);
    const boards = layer('boards', 0.022, buildingMaterials.timber);
    switch (floor) {
        case 'tile': return [layer('finish', 0.01, buildingMaterials.tile), slab];
        case 'vinyl': case 'other_waterproof': return [layer('finish', 0.002, buildingMaterials.vinyl), slab];
        case 'stone': return [layer('finish', 0.02, buildingMaterials.stone), slab];
        case 'wood': return [boards];
        case 'carpet': return [layer('finish', 0.008, buildingMaterials.carpet), boards];
        case 'concrete': case undefined: return [slab];
        default: return floor satisfies never;
    }
}
