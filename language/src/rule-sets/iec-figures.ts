import { mm } from '../core/length.js';
import { bs703, iec335, iec552, iec703 } from './documents.js';

/** Zone 1 reaches this far from the heater on plan; zone 3 begins this high above the floor. */
export const zoneOneOffset = mm(500);
export const zoneTwoTop = mm(1000);
/** What equipment, and what cable insulation and sheath, withstand in zone 3, °C. */
export const zoneThreeEquipmentC = 125;
export const zoneThreeCableC = 170;
/** Residual current device on the circuits of the room other than the heater, A. */
export const residualCurrentA = 0.03;
/** Voltage drop for uses other than lighting from a public network, as a share of the supply voltage. */
export const iecDropLimit = 0.05;
/** What the product standard of heaters covers. */
export const heaterStandardLimits = { watts: 20_000, singlePhaseVolts: 250, otherVolts: 480 } as const;

export const iecCitations = {
    zoneOne: iec703.fromMemory('703.32', 'Zone 1 reaches from floor to ceiling, 0.5 m around the heater or to the cold side of the wall insulation.'),
    zoneHeights: iec703.fromMemory('703.32', 'Outside zone 1, zone 2 is below and zone 3 above a plane 1.0 m over the floor.'),
    zoneOneEquipment: iec703('703.512.2', 'In zone 1 only the heater and equipment belonging to it.'),
    zoneTwoEquipment: iec703('703.512.2', 'In zone 2 no special requirement on heat resistance.'),
    zoneThreeEquipment: iec703('703.512.2', 'In zone 3 equipment withstands an ambient temperature of 125 °C.'),
    zoneThreeCable: iec703('703.512.2', 'In zone 3 insulation and sheath of cables withstand 170 °C.'),
    ingress: bs703('703.512.2', 'Equipment in the room has at least IPX4.'),
    ingressHosed: bs703('703.512.2', 'IPX5 where water jets clean the room.'),
    socketOutlet: iec703.fromMemory('703.55', 'Socket-outlets are not in the room.'),
    switchgear: iec703.fromMemory('703.537.5', 'Switchgear not built into the heater is outside the room.'),
    residualCurrent: iec703.fromMemory('703.411.3.3', 'Residual current protection of 30 mA at most on every circuit of the room except the heater.'),
    drop: iec552.fromMemory('Table G.52.1', 'From a public low-voltage network, 5 % for uses other than lighting.'),
    heaterStandard: iec335('1', 'Heaters up to 20 kW, 250 V single-phase, 480 V otherwise.'),
} as const;
