import { inCubicMetres } from '../core/length.js';
import { showLength, showNumber } from '../core/show.js';
import type { Results } from '../assembly/results.js';
import type { Job } from '../model/job.js';
import { manualCitation } from '../engines/heater/casing.js';
import { amountFact, lengthFact, wordsFact } from './fact.js';
import type { FactProvider } from './facts-tree.js';

/** `⟨heater⟩.…`: volume method, tightest clearances, positions that clear, stones, fastenings. */
export function heaterFacts(job: Job, results: Results): readonly FactProvider[] {
    const show = (length: Parameters<typeof showLength>[0]): string => showLength(length, job.unit);
    return results.heaters.flatMap(({ name, block, model, manual, heater, sizing, clearances, range, fastening, sensor }): FactProvider[] => {
        const source = manualCitation(manual);
        const tightest = (direction: string) => (): typeof clearances[number] | undefined => clearances.filter(found => found.direction === direction && found.required && found.status !== 'exempt')
            .reduce<typeof clearances[number] | undefined>((best, one) => best && spare(best) <= spare(one) ? best : one, undefined);
        const spare = ({ measured, required }: typeof clearances[number]): number => measured - (required?.value ?? 0);
        return [
            amountFact(`${name}.power`, 'rated power', 'kW', () => { const watts = model.values.power?.value; return watts === undefined ? undefined : watts / 1000; }, () => ({ because: [block.values.model, model.values.power], source })),
            amountFact(`${name}.effective_volume`, 'volume by the volume method', 'm3', () => inCubicMetres(sizing.effectiveVolume), () => ({
                because: [block.values.model, model.values.volume, job.room?.values.height], source: sizing.allowance,
                how: sizing.contributions.map(one => `${one.name} ${showNumber(inCubicMetres(one.volume), 2)} m3`).join(' + '),
            })),
            wordsFact(`${name}.declared_volume`, 'volume its manual declares', () => sizing.declared && `${showNumber(sizing.declared.from, 2)} to ${showNumber(sizing.declared.to, 2)} m3`, () => ({ because: [model.values.volume], source })),
            ...(['side', 'front', 'above', 'below'] as const).map(direction => lengthFact(`${name}.clearance.${direction}`, `tightest clearance ${direction === 'side' ? 'beside' : direction === 'front' ? 'before' : direction} it`, () => tightest(direction)()?.measured, () => {
                const found = tightest(direction)();
                return { because: [block.values.from ?? block.values.centre, model.span], source: found?.required?.citation, how: found && `to ${found.thing.kind} ${found.thing.name}; ${found.required ? show(found.required.value) : 'nothing'} is needed` };
            })),
            wordsFact(`${name}.clear_positions`, 'positions that clear everything', () => range && (range.ranges.length > 0 ? range.ranges.map(({ from, to }) => `from ${range.from} ${show(from)} to ${show(to)}`).join(', or ') : 'none on this wall'), () => ({ because: [block.values.from ?? block.values.centre], source })),
            lengthFact(`${name}.stone_top`, 'top of the stones', () => heater?.stoneTop, () => ({ because: [model.values.off_floor, model.values.body], source })),
            lengthFact(`${name}.fastening_height`, 'upper screws over the floor', () => fastening?.points?.[0].v, () => ({ because: [model.values.fasten_height, model.values.off_floor], source })),
            wordsFact(`${name}.sensor_band`, 'sensor below the ceiling', () => sensor?.height && `${show(sensor.height.band.range.from)} to ${show(sensor.height.band.range.to)}`, () => ({ because: [model.values.sensor, model.values.sensor_below_ceiling], source: sensor?.height?.band.citation })),
        ];
    });
}
