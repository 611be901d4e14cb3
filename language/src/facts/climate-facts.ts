import type { Results } from '../assembly/results.js';
import type { Condition } from '../assembly/climate-conditions.js';
import { showCitation } from '../core/citation.js';
import { showNumber } from '../core/show.js';
import { ofAmount } from '../core/value.js';
import { layerResistance, flowThrough, type ElementLoss } from '../engines/climate/envelope.js';
import { glassCitation, glassU } from '../engines/climate/glass.js';
import { saturationPressure, steamVolume } from '../engines/climate/psychrometrics.js';
import { combinedCitation } from '../engines/climate/resistance.js';
import { psychrometrics } from '../engines/climate/sources.js';
import { stackCitation } from '../engines/climate/stack-flow.js';
import type { Job } from '../model/job.js';
import { amountFact, type Making } from './fact.js';
import type { FactProvider } from './facts-tree.js';

/** A figure with where it comes from when nobody wrote it. */
export const stated = ({ value, citation, isDefault }: Condition, unit: string, places = 1, times = 1): string => `${showNumber(value * times, places)}${unit && ` ${unit}`}${isDefault ? ` (default: ${citation.kind === 'practice' ? `${citation.text}, ${showCitation(citation)}` : citation.text})` : ''}`;

/** A fact in a unit the language does not count with: in calculations it is the bare number. */
export const rateFact = (path: string, title: string, unit: string, value: () => number | undefined, making: () => Making): FactProvider =>
    amountFact(path, title, unit, value, number => ({ ...making(), exact: ofAmount(number, '') }));

/** `room.u_value.…`, losses, air changes, and what a ladle does: each with formula, inputs and source. */
export function climateFacts(job: Job, results: Results): readonly FactProvider[] {
    const { climate, room } = results;
    if (!climate || !room) return [];
    const { conditions } = climate;
    const layers = Object.values(room.system.values).map(({ span }) => span).slice(0, 6);
    const bathing = conditions.bathing.span;
    const isKnown = ({ element }: ElementLoss): boolean => climate.shell.lacks.length === 0 || (element.kind !== 'wall' && element.kind !== 'ceiling');
    const losses = (): readonly ElementLoss[] => climate.losses.filter(isKnown);
    const uFact = (path: string, title: string, name: string): FactProvider => {
        const found = (): ElementLoss | undefined => losses().find(({ element }) => element.name === name);
        return rateFact(path, title, 'W/(m2 K)', () => found()?.published.u, () => ({ because: layers, how: found() && howU(found() as ElementLoss), source: name.endsWith('pane') || found()?.element.kind === 'glass' ? glassCitation : combinedCitation }));
    };
    const steamMaking = (how: string): Making => ({ because: [job.climate?.values.ladle, job.site?.values.humidity ?? job.site?.values.ambient, bathing], how, source: psychrometrics });
    const { steam } = climate;
    const water = stated(conditions.ladleKg, 'kg', 3);
    return [
        ...(['front', 'left', 'back', 'right', 'ceiling', 'floor'] as const).map(name => uFact(`room.u_value.${name}`, `U-value, ${name}`, name)),
        ...[...results.doors, ...results.windows].map(({ name }) => uFact(`${name}.u_value`, 'U-value', name)),
        amountFact('room.transmission_loss', 'loss through the shell at bathing temperature', 'W', () => climate.transmissionW, () => ({
            because: [bathing, ...layers], source: combinedCitation,
            how: `${climate.losses.map(({ element, lossW }) => `${element.name} ${showNumber(lossW, 0)}`).join(' + ')}; inside ${stated(conditions.bathing, 'degC')}, around ${stated(conditions.around, 'degC')}; surfaces of a hot room; the air counts as mixed, so the floor's share is an upper figure`,
        })),
        rateFact('air.flow_hot', 'air through the hot room', 'm3/h', () => climate.air && climate.air.hot.flowM3PerS * 3600, () => ({
            because: results.air?.vents.map(({ block }) => block.head) ?? [], source: stackCitation,
            how: climate.air && `stack of ${showNumber(conditions.bathing.value - climate.air.supplyC, 1)} K; neutral level ${showNumber(climate.air.hot.neutralM, 2)} m over the floor; ${climate.air.hot.through.map(({ name, flowM3PerS }) => `${name} ${showNumber(flowM3PerS * 3600, 1)} m3/h`).join(', ')} (outward positive)`,
        })),
        ...(['hot', 'cold'] as const).map(state => rateFact(`air.changes_${state}`, `air changes an hour, ${state} room`, 'per h', () => climate.air?.[state].changes, () => ({
            because: results.air?.vents.map(({ block }) => block.head) ?? [], source: stackCitation, how: climate.air && `${showNumber(climate.air[state].flowM3PerS * 3600, 1)} m3/h through ${showNumber(climate.volumeM3, 2)} m3`,
        }))),
        amountFact('air.loss', 'loss by ventilation at bathing temperature', 'W', () => climate.air?.lossW, () => ({ because: [bathing], source: stackCitation, how: climate.air && `${showNumber(climate.air.hot.flowM3PerS * 3600, 1)} m3/h from ${showNumber(climate.air.supplyC, 1)} to ${showNumber(conditions.bathing.value, 1)} degC` })),
        amountFact('room.humidity', 'relative humidity at bathing temperature, before a ladle', '%', () => steam.before.humidity * 100, () => steamMaking(
            `vapour of ${stated(conditions.around, 'degC')} at ${stated(conditions.aroundHumidity, '%', 0, 100)}: ${showNumber(steam.before.vapourPa, 0)} Pa of ${showNumber(saturationPressure(conditions.bathing.value), 0)} Pa`)),
        amountFact('room.humidity_after_ladle', 'relative humidity after a ladle', '%', () => steam.after.humidity * 100, () => steamMaking(
            `${water} of steam, ${showNumber(conditions.ladleKg.value * steamVolume(conditions.bathing.value), 2)} m3 alone, in ${showNumber(climate.volumeM3, 2)} m3: ${showNumber(steam.after.vapourPa, 0)} Pa; nothing aired out, nothing taken up by the wood, so an upper figure`)),
        rateFact('room.humidity_ratio_after_ladle', 'vapour for each kg of dry air after a ladle', 'g/kg', () => steam.after.ratio && steam.after.ratio * 1000, () => steamMaking(`0.621945 p / (101325 - p), p = ${showNumber(steam.after.vapourPa, 0)} Pa`)),
        rateFact('room.enthalpy_after_ladle', 'enthalpy for each kg of dry air after a ladle', 'kJ/kg', () => steam.after.enthalpy && steam.after.enthalpy / 1000, () => steamMaking('1.006 t + W (2501 + 1.86 t)')),
        amountFact('room.dew_point_after_ladle', 'dew point after a ladle', 'degC', () => steam.after.dewPointC, () => steamMaking(`where ${showNumber(steam.after.vapourPa, 0)} Pa saturates`)),
        rateFact('room.heat_of_ladle', 'heat a ladle takes from the stones', 'kJ', () => steam.heatJ / 1000, () => steamMaking(`${water} from ${showNumber(conditions.around.value, 1)} to 100 degC and 2257 kJ/kg to steam`)),
    ];
}

function howU({ element, published }: ElementLoss): string {
    const flow = flowThrough(element.kind);
    const layers = element.layers.map(layer => `${layer.role.replace('_', ' ')} ${showNumber(layer.thicknessM * 1000, 1)} mm ${layerResistance(layer, flow).parts.map(({ share, resistance }) => share === 1 ? showNumber(resistance, 3) : `${showNumber(resistance, 3)} over ${showNumber(share * 100, 1)} %`).join(' and ')}${marks(layer)}`);
    return `resistances in m2 K/W: ${layers.join(' + ')} and both surfaces; limits ${showNumber(published.upper, 3)} and ${showNumber(published.lower, 3)}, mean ${showNumber(published.total, 3)}${element.glazing && !element.isInTheOpen ? `; in a building, where the glass trade's figure between a room and the open is ${showNumber(glassU(element.glazing), 2)} W/(m2 K)` : ''}`;
}
const marks = (layer: ElementLoss['element']['layers'][number]): string => {
    if (layer.kind === 'air' || layer.kind === 'gap') return '';
    const { value, isDefault, citation } = layer.material.conductivity;
    return ` (${isDefault ? 'default ' : ''}${showNumber(value, 3)} W/(m K)${isDefault ? `, ${showCitation(citation)}` : ''})`;
};
