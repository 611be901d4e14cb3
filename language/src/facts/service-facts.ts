import { barrierC, powerByVolume, slatMovements, surfacesOf } from '../assembly/climate-service.js';
import { wetHumidity } from '../assembly/climate-moisture.js';
import type { Results } from '../assembly/results.js';
import { ticks, TICKS_PER_METRE, type Length } from '../core/length.js';
import { showNumber } from '../core/show.js';
import { diffusionCitation } from '../engines/climate/movement.js';
import { stoneHeat, stonesOverAir, longestWarmUpS } from '../engines/climate/warm-up.js';
import { woodMoisture, woodShrinkage } from '../engines/climate/wood.js';
import type { Citation } from '../core/citation.js';
import type { Job } from '../model/job.js';
import { rateFact, stated } from './climate-facts.js';
import { amountFact, lengthFact, wordsFact, type Making } from './fact.js';
import type { FactProvider } from './facts-tree.js';

const conduction: Citation = { kind: 'geometry', text: 'one-dimensional conduction through every build-up (Fourier), coupled to one well-mixed air and the stones' };
/** To the nearest hundredth of a millimetre: wood is no finer. */
const asLength = (metres: number): Length => ticks(Math.round(metres * 1e5) * TICKS_PER_METRE / 1e5);

/** Warm-up, power needed, energy and money of every heater; moisture and movement of lining and slats. */
export function serviceFacts(job: Job, results: Results): readonly FactProvider[] {
    const { climate } = results;
    if (!climate) return [];
    const { conditions } = climate;
    const minutes = (seconds: number): string => `${showNumber(seconds / 60, 1)} min`;
    const { lining, moisture } = climate;
    const moistureMaking = (how: string): Making => ({ because: [job.climate?.values.shop_humidity, job.climate?.values.hot_hours, job.site?.values.humidity ?? job.site?.values.ambient], how, source: woodMoisture });
    const boards = [results.room?.system.values.lining, job.climate?.values.hot_hours];
    const [first] = climate.heating;
    return [
        ...climate.heating.flatMap((heating): FactProvider[] => {
            const { name, watts, stonesKg } = heating;
            const because = [job.climate?.values.bathing, job.climate?.values.within, heating.model.values.power];
            return [
                amountFact(`${name}.warm_up`, 'time to bathing temperature', 'min', () => { const seconds = heating.warmUp?.seconds; return seconds === undefined ? undefined : seconds / 60; }, () => ({
                    because, source: conduction,
                    how: heating.warmUp && `${showNumber(watts / 1000, 2)} kW, from ${stated(conditions.around, 'degC')} to ${stated(conditions.bathing, 'degC')}; stones ${showNumber(stonesKg, 1)} kg of ${stoneHeat.value} J/(kg K), ${stonesOverAir.value} K over the air at full power (common practice, no source); ${heating.warmUp.cells} cells, steps of ${showNumber(heating.warmUp.stepS, 1)} s, good to ${showNumber(heating.warmUp.errorS, 0)} s`,
                })),
                amountFact(`${name}.power_needed`, 'power needed for the time asked', 'kW', () => heating.neededW === undefined ? undefined : heating.neededW / 1000, () => {
                    const sizing = results.heaters.find(heater => heater.name === name)?.sizing;
                    const byVolume = sizing && powerByVolume(sizing.effectiveVolume);
                    return {
                        because, source: conduction,
                        how: `to ${stated(conditions.bathing, 'degC')} in ${conditions.within ? stated(conditions.within, 'min', 0, 1 / 60) : ''}; it has ${showNumber(watts / 1000, 2)} kW${byVolume ? `; the volume method wants ${showNumber(byVolume.least / 1000, 1)} to ${showNumber(byVolume.most / 1000, 1)} kW (common practice, no source)` : ''}${sizing?.declared ? `; its manual declares ${showNumber(sizing.declared.from, 1)} to ${showNumber(sizing.declared.to, 1)} m3` : ''}`,
                    };
                }),
                rateFact(`${name}.session_energy`, 'electricity of a session', 'kWh', () => heating.warmUp && heating.warmUp.energy.heaterJ / 3.6e6, () => ({
                    because: [job.climate?.values.session, ...because], source: conduction,
                    how: heating.warmUp && `warming up and ${stated(conditions.session, 'min', 0, 1 / 60)} under the thermostat: ${showNumber(heating.warmUp.energy.storedJ / 3.6e6, 2)} kWh kept in shell, stones and air, ${showNumber(heating.warmUp.energy.throughShellJ / 3.6e6, 2)} through the shell, ${showNumber(heating.warmUp.energy.airedJ / 3.6e6, 2)} with the air; the sum closes within ${showNumber(heating.warmUp.energy.imbalance * 100, 3)} %`,
                })),
                wordsFact(`${name}.session_cost`, 'cost of a session', () => conditions.tariff && heating.warmUp && `${showNumber(heating.warmUp.energy.heaterJ / 3.6e6 * conditions.tariff.value.perKwh, 2)} ${conditions.tariff.value.currency}`, () => ({
                    because: [conditions.tariff], how: conditions.tariff && heating.warmUp && `${showNumber(heating.warmUp.energy.heaterJ / 3.6e6, 2)} kWh at ${showNumber(conditions.tariff.value.perKwh, 4)} ${conditions.tariff.value.currency}`,
                })),
            ];
        }),
        ...(['lining', 'barrier', 'facing'] as const).map(which => amountFact(`room.${which}_temperature`, which === 'facing' ? 'warmest facing after a session' : `coldest ${which} when bathing temperature is reached`, 'degC', () => {
            const state = which === 'facing' ? first?.warmUp?.end : first?.warmUp?.atTarget;
            if (!state) return undefined;
            return which === 'barrier' ? barrierC(climate, state)?.celsius : surfacesOf(climate, state)?.[which === 'lining' ? 'coldestLiningC' : 'warmestFacingC'];
        }, () => ({ because: [job.climate?.values.bathing, results.room?.system.values.lining], source: conduction, how: which === 'barrier' ? `behind the lining; the dew point after a ladle is ${showNumber(climate.steam.after.dewPointC ?? NaN, 1)} degC` : which === 'facing' ? `at the end of ${minutes(first?.warmUp?.end.seconds ?? longestWarmUpS)}` : 'at its face' }))),
        amountFact('room.moisture.shop', 'moisture of boards in the shop', '%', () => moisture.shop, () => moistureMaking(`${stated(conditions.shop, 'degC')}, ${stated(conditions.shopHumidity, '%', 0, 100)}`)),
        amountFact('room.moisture.store', 'moisture of boards in the store', '%', () => moisture.store, () => moistureMaking(`${stated(conditions.store, 'degC')}, ${stated(conditions.storeHumidity, '%', 0, 100)}`)),
        amountFact('room.moisture.service', 'moisture of the lining, mean of a week', '%', () => moisture.service, () => ({ ...moistureMaking(`${stated(conditions.hotHours, 'h')} hot, the rest at ${showNumber(moisture.rest, 1)} %; hours weighed by how fast water moves in wood`), source: diffusionCitation })),
        amountFact('room.moisture.wet', 'moisture of a bench washed down', '%', () => moisture.wet, () => ({ ...moistureMaking(`air of ${wetHumidity * 100} % on wet wood (common practice, no source)`) })),
        lengthFact('room.board_change', 'change of a lining board, shop to service', () => lining && asLength(lining.changeM), () => ({ because: boards, source: woodShrinkage, how: lining && `${showNumber(lining.board.widthM * 1000, 1)} mm x ${showNumber(lining.board.coefficient * 100, 3)} % x (${showNumber(moisture.service, 1)} - ${showNumber(moisture.shop, 1)})` })),
        lengthFact('room.tongue_left', 'tongue left in its groove in hot service', () => lining && lining.board.tongueM > 0 ? asLength(lining.tongueLeftM) : undefined, () => ({ because: boards, source: woodShrinkage, how: lining && `tongue of ${showNumber(lining.board.tongueM * 1000, 2)} mm (section less cover), board in a fixed frame` })),
    ];
}

/** `⟨bench⟩.slat_gap_…`. */
export function slatFacts(_job: Job, results: Results): readonly FactProvider[] {
    const { climate } = results;
    return !climate ? [] : (results.benches?.result.benches ?? []).flatMap(({ name }): FactProvider[] => {
        const found = (): ReturnType<typeof slatMovements>[number] | undefined => slatMovements(climate, results.benches).find(({ bench }) => bench === name);
        const build = results.benches?.blocks.get(name)?.values.build;
        return (['dry', 'wet'] as const).map(state => lengthFact(`${name}.slat_gap_${state}`, state === 'dry' ? 'gap between slats in hot service' : 'gap between slats washed down', () => { const slat = found(); return slat && asLength(Math.max(0, state === 'dry' ? slat.dryM : slat.wetM)); }, () => {
            const slat = found();
            return { because: [build], source: woodShrinkage, how: slat && `${showNumber(slat.gapM * 1000, 2)} mm as made at ${showNumber(climate.moisture.shop, 1)} %, slats of ${showNumber(slat.slat.widthM * 1000, 1)} mm x ${showNumber(slat.slat.coefficient * 100, 3)} % x (${showNumber(state === 'dry' ? climate.moisture.service : climate.moisture.wet, 1)} - ${showNumber(climate.moisture.shop, 1)})` };
        }));
    });
}
