import { walls } from '../core/geometry.js';
import { inCubicMetres, volume } from '../core/length.js';
import { showLength, spoken } from '../core/show.js';
import type { Results } from '../assembly/results.js';
import { freeCircleOf } from '../assembly/access.js';
import { panelUnits } from '../engines/shell/parts.js';
import { ofVolume } from '../core/value.js';
import type { Job } from '../model/job.js';
import { amountFact, lengthFact, type Making, wordFact, wordsFact } from './fact.js';
import type { FactProvider } from './facts-tree.js';

/** `room.…`: thickness, inside size and volume, panels, headroom, base and fit on site. */
export function roomFacts(job: Job, results: Results): readonly FactProvider[] {
    const given = job.room?.values;
    const system = given?.system?.value.block?.values;
    const show = (length: Parameters<typeof showLength>[0]): string => showLength(length, job.unit);
    const layers = [system?.lining, system?.core, system?.facing];
    const insideHow = (axis: 'width' | 'depth', from: 'left' | 'front', to: 'right' | 'back') => (): Making => {
        const outside = given?.[axis];
        const t = results.room?.thickness;
        return { because: [outside, ...layers], how: outside && t ? `${show(outside.value)} outside less walls of ${show(t[from])} and ${show(t[to])}` : undefined };
    };
    const shell = (): NonNullable<Results['shell']>['result'] | undefined => results.shell?.result;
    return [
        lengthFact('room.wall_thickness', 'wall thickness', () => results.room?.thickness.front, () => ({ because: layers, how: 'sum of the layers from lining to facing' })),
        lengthFact('room.ceiling_thickness', 'ceiling thickness', () => results.room?.ceilingThickness, () => ({ because: layers, how: 'sum of the layers of a ceiling panel' })),
        lengthFact('room.inside.width', 'inside width', () => results.inside?.width, insideHow('width', 'left', 'right')),
        lengthFact('room.inside.depth', 'inside depth', () => results.inside?.depth, insideHow('depth', 'front', 'back')),
        lengthFact('room.inside.height', 'inside height', () => results.inside?.height, () => ({
            because: [given?.height, ...layers], how: given?.height && results.room ? `${show(given.height.value)} less the ceiling of ${show(results.room.ceilingThickness)}` : undefined,
        })),
        amountFact('room.inside.volume', 'inside volume', 'm3', () => { const i = results.inside; return i && inCubicMetres(volume(i.width, i.depth, i.height)); }, () => {
            const i = results.inside;
            return { because: [given?.width, given?.depth, given?.height], exact: i && ofVolume(volume(i.width, i.depth, i.height)), how: i && `${show(i.width)} x ${show(i.depth)} x ${show(i.height)}` };
        }),
        lengthFact('room.panel_height', 'wall panel height', () => shell()?.wallPanelHeight, () => ({ because: [given?.height, system?.plate], how: 'outside height less base plate and ceiling panel' })),
        ...walls.flatMap((wall): FactProvider[] => [
            wordsFact(`room.${wall}.panels`, `${wall} wall, panels left to right seen from inside`, () => {
                const panels = shell()?.walls[wall].panels;
                return panels && panels.length > 0 ? panels.map(panel => `${panel.mark} ${show(panel.cover)}`).join(', ') : undefined;
            }, () => ({ because: [wall === 'front' || wall === 'back' ? given?.width : given?.depth, system?.modules] })),
        ]),
        amountFact('room.panels', 'panels', '', () => { const s = shell(); return s && panelUnits(s).length; }, () => ({ because: [given?.width, given?.depth, system?.modules] })),
        amountFact('room.panel_mass', 'mass of the panel layers', 'kg', () => {
            const panels = shell();
            const weights = panels && panelUnits(panels).filter(panel => panel.opening === undefined).map(panel => panel.weight);
            return weights?.every(weight => weight.isKnown) ? weights.reduce((total, { kg }) => total + kg, 0) : undefined;
        }, () => ({ because: layers, how: 'layers by their densities; frames, doors and windows not counted, so panels are heavier' })),
        wordFact('room.closing_corner', 'corner closed last', () => shell()?.closing?.corner, spoken, () => ({ because: [given?.closing_corner, job.site?.values.free], how: 'a corner free to swing outward by the engagement' })),
        lengthFact('room.assembly_headroom', 'height needed to put it up', () => shell()?.headroom.required, () => {
            const headroom = shell()?.headroom;
            return { because: [given?.height, job.site?.values.ceiling], how: headroom && `${headroom.governing.kind.replaceAll('-', ' ')} governs${headroom.available === undefined ? '' : `; ${show(headroom.available)} is there`}` };
        }),
        lengthFact('room.turning_circle', 'largest circle free on the floor', () => results.floor && freeCircleOf(results.floor)?.diameter, () => {
            const circle = results.floor && freeCircleOf(results.floor);
            return { because: [given?.width, given?.depth], how: circle && `its middle ${showLength(circle.x, job.unit, 'drawing')} from the left lining and ${showLength(circle.y, job.unit, 'drawing')} from the front one, clear of benches, heaters, guards and inward doors` };
        }),
        ...(['width', 'depth'] as const).map(axis => lengthFact(`site.spare_${axis}`, `${axis} to spare on site`, () => results.site?.fit?.axes.find(found => found.axis === axis)?.spare, () => {
            const found = results.site?.fit?.axes.find(one => one.axis === axis);
            return { because: [job.site?.values[axis], given?.[axis]], how: found && `${show(found.available)} less ${show(found.outside)} and the gaps owed to the building` };
        })),
    ];
}
