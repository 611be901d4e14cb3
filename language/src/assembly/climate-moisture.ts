import { inMetres, minus } from '../core/length.js';
import { boardMovement, weeklyMoisture, type BoardMovement, type FixedBoard } from '../engines/climate/movement.js';
import type { Steam } from '../engines/climate/psychrometrics.js';
import { equilibriumMoisture, speciesOf } from '../engines/climate/wood.js';
import type { Block, Link } from '../model/block.js';
import type { ClimateConditions } from './climate-conditions.js';
import type { RoomShell } from './room.js';

/** Moisture contents wood comes to, per cent of its dry mass. */
export interface WoodMoisture {
    readonly shop: number;
    readonly store: number;
    /** The mean of a week with its hot hours. */
    readonly service: number;
    /** Between baths alone: in the air around the room. */
    readonly rest: number;
    /** Of a bench that was washed down and dries slowly: in air of `wetHumidity`. */
    readonly wet: number;
}
/** Common practice, no source: wood that was washed down stands in air of 90 %. */
export const wetHumidity = 0.9;

/** Hot, the air counts half of the time as before a ladle and half as after it. */
export function woodMoisture({ around, aroundHumidity, bathing, hotHours, shop, shopHumidity, store, storeHumidity }: ClimateConditions, { before, after }: Steam): WoodMoisture {
    const rest = { celsius: around.value, humidity: aroundHumidity.value };
    return {
        shop: equilibriumMoisture(shop.value, shopHumidity.value), store: equilibriumMoisture(store.value, storeHumidity.value),
        service: weeklyMoisture({ celsius: bathing.value, humidity: (before.humidity + after.humidity) / 2 }, rest, hotHours.value),
        rest: equilibriumMoisture(rest.celsius, rest.humidity), wet: equilibriumMoisture(rest.celsius, wetHumidity),
    };
}

export interface LiningMovement extends BoardMovement {
    readonly board: FixedBoard;
}

/** A board of a stock as it moves in a frame; nothing while neither its shrinkage nor a species of the tables is written. */
export function fixedBoard(link: Link<'material' | 'stock'> | undefined): FixedBoard | undefined {
    const block: Block<'material'> | Block<'stock'> | undefined = link?.block;
    if (block?.kind !== 'stock' || !block.values.section) return undefined;
    const { shrinkage, species, section, cover } = block.values;
    const coefficient = shrinkage ? shrinkage.value / 100 : speciesOf(species?.value)?.tangential;
    const width = section.value.height;
    return coefficient === undefined ? undefined : { widthM: inMetres(width), tongueM: cover ? inMetres(minus(width, cover.value)) : 0, coefficient };
}

/** What the lining boards do from the shop to hot service. */
export function liningMovement({ system }: RoomShell, { shop, service }: WoodMoisture): LiningMovement | undefined {
    const board = fixedBoard(system.values.lining?.value.of);
    return board && { board, ...boardMovement(board, shop, service) };
}
