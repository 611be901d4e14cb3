import { airLayerResistance, combinedResistance, insideSurface, outsideSurface, surfaceResistance, type CombinedResistance, type HeatFlow, type ResistanceLayer } from './resistance.js';
import { gapResistance, type Glazing } from './glass.js';
import type { ThermalMaterial } from './materials.js';

/** A layer of a build-up, inside to outside. */
export type EnvelopeLayer =
    | { readonly kind: 'solid'; readonly role: string; readonly thicknessM: number; readonly material: ThermalMaterial }
    /** A space between panes. */
    | { readonly kind: 'gap'; readonly role: string; readonly thicknessM: number }
    /** Of still air. */
    | { readonly kind: 'air'; readonly role: string; readonly thicknessM: number }
    /** Material between members of a frame: `share` of the area is frame. */
    | { readonly kind: 'bridged'; readonly role: string; readonly thicknessM: number; readonly material: ThermalMaterial; readonly frame: ThermalMaterial; readonly share: number };

export interface EnvelopeElement {
    /** `front wall`, `ceiling`, `door entry`. */
    readonly name: string;
    readonly kind: 'wall' | 'ceiling' | 'floor' | 'door' | 'glass';
    readonly areaM2: number;
    readonly layers: readonly EnvelopeLayer[];
    /** Of glass. */
    readonly glazing?: Glazing;
    readonly outsideC: number;
    /** In the open, where wind takes the heat away, rather than in a building. */
    readonly isInTheOpen: boolean;
}

/** Heat goes up through a ceiling, down through a floor, sideways through the rest. */
export const flowThrough = (kind: EnvelopeElement['kind']): HeatFlow => kind === 'ceiling' ? 'up' : kind === 'floor' ? 'down' : 'horizontal';

export interface ElementLoss {
    readonly element: EnvelopeElement;
    /** With the surface resistances of the tables: the figure other people compute. */
    readonly published: CombinedResistance;
    /** With the surfaces of a hot room: what the loss is worked out with. */
    readonly hot: CombinedResistance;
    readonly insideResistance: number;
    readonly outsideResistance: number;
    /** W/K and W at bathing temperature. */
    readonly conductance: number;
    readonly lossW: number;
}

/** Resistance of one layer for heat going one way. */
export function layerResistance(layer: EnvelopeLayer, flow: HeatFlow): ResistanceLayer {
    switch (layer.kind) {
        case 'solid': return { name: layer.role, parts: [{ share: 1, resistance: layer.thicknessM / layer.material.conductivity.value }] };
        case 'gap': return { name: layer.role, parts: [{ share: 1, resistance: gapResistance(layer.thicknessM) }] };
        case 'air': return { name: layer.role, parts: [{ share: 1, resistance: airLayerResistance(layer.thicknessM, flow) }] };
        case 'bridged': return {
            name: layer.role, parts: [
                { share: 1 - layer.share, resistance: layer.thicknessM / layer.material.conductivity.value }, { share: layer.share, resistance: layer.thicknessM / layer.frame.conductivity.value },
            ].filter(({ share }) => share > 0),
        };
    }
}

/**
 * Steady loss of every element of the shell at bathing temperature.
 * @param bathingC air inside, well mixed: the air at the floor is cooler, so the loss through the floor is an upper figure
 */
export function envelopeLoss(elements: readonly EnvelopeElement[], bathingC: number): readonly ElementLoss[] {
    return elements.map(element => {
        const flow = flowThrough(element.kind);
        const layers = element.layers.map(layer => layerResistance(layer, flow));
        const [inside, outside] = surfaces(element, bathingC);
        const published = combinedResistance(layers, insideSurface[flow], element.isInTheOpen ? outsideSurface : insideSurface[flow]);
        const hot = combinedResistance(layers, inside, outside);
        const conductance = element.areaM2 * hot.u;
        return { element, published, hot, insideResistance: inside, outsideResistance: outside, conductance, lossW: conductance * (bathingC - element.outsideC) };
    });
}

/** Surface resistances inside and outside of an element in a hot room, at the mean of bathing and outside temperature within. */
export function surfaces({ kind, outsideC, isInTheOpen }: Pick<EnvelopeElement, 'kind' | 'outsideC' | 'isInTheOpen'>, bathingC: number): readonly [inside: number, outside: number] {
    const flow = flowThrough(kind);
    return [surfaceResistance(flow, (bathingC + outsideC) / 2), isInTheOpen ? outsideSurface : surfaceResistance(flow, outsideC)];
}

/** Share of a panel's face that is frame: two edge studs and two plates of one thickness round it. */
export function frameShare(panelWidthM: number, panelHeightM: number, memberM: number): number {
    const clear = Math.max(0, panelWidthM - 2 * memberM) * Math.max(0, panelHeightM - 2 * memberM);
    return panelWidthM > 0 && panelHeightM > 0 ? 1 - clear / (panelWidthM * panelHeightM) : 0;
}
