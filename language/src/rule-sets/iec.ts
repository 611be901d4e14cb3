import { mm } from '../core/length.js';
import { documents, iec335, iee703 } from './documents.js';
import { amperes, celsius, hours, length, no, ratio, volts, watts, word, yes } from './figure.js';
import { heaterStandardLimits, iecCitations, iecDropLimit, residualCurrentA, zoneOneOffset, zoneThreeCableC, zoneThreeEquipmentC, zoneTwoTop } from './iec-figures.js';
import { clause, type RuleSet } from './rule-set.js';

export const iec: RuleSet<'iec'> = {
    id: 'iec',
    title: 'IEC 60364 installations',
    family: 'iec',
    scope: 'A room erected on site where the wiring rules follow IEC 60364.',
    documents: [documents.iec703, documents.bs703, documents.iec552, documents.iec554, documents.iec335],
    clauses: [
        clause('zone.one-offset', length(zoneOneOffset), iecCitations.zoneOne),
        clause('zone.two-top', length(zoneTwoTop), iecCitations.zoneHeights),
        clause('zone.two-top', length(mm(500)), iee703('§603', 'The older four zones had the plane 0.5 m over the floor.'), { isSuperseded: true }),
        clause('zone.one-equipment', word('heater_and_what_belongs_to_it'), iecCitations.zoneOneEquipment),
        clause('zone.two-equipment', word('no_special_requirement'), iecCitations.zoneTwoEquipment),
        clause('zone.three-equipment', celsius(zoneThreeEquipmentC), iecCitations.zoneThreeEquipment),
        clause('zone.three-cable', celsius(zoneThreeCableC), iecCitations.zoneThreeCable),
        clause('equipment.ingress', word('IPX4'), iecCitations.ingress),
        clause('equipment.ingress', word('IP24'), iee703('§603', 'The older text, and national versions made from it, ask for IP24.'), { isSuperseded: true }),
        clause('equipment.ingress-hosed', word('IPX5'), iecCitations.ingressHosed, { when: 'hosed' }),
        clause('equipment.socket-outlet-in-room', no, iecCitations.socketOutlet),
        clause('equipment.switchgear-in-room', no, iecCitations.switchgear),
        clause('circuit.residual-current', amperes(residualCurrentA), iecCitations.residualCurrent, { when: 'other_circuits' }),
        clause('circuit.selv-protection', word('barrier_IP24_or_insulation_tested_at_500_V'), iee703('§603', 'Basic protection of SELV and PELV circuits: barriers of IPXXB or IP24, or insulation tested at 500 V for 1 minute.'), { when: 'extra_low_voltage' }),
        clause('circuit.voltage-drop', ratio(iecDropLimit), iecCitations.drop),
        clause('heater.power-in-scope', watts(heaterStandardLimits.watts), iecCitations.heaterStandard),
        clause('heater.voltage-single-in-scope', volts(heaterStandardLimits.singlePhaseVolts), iecCitations.heaterStandard),
        clause('heater.voltage-in-scope', volts(heaterStandardLimits.otherVolts), iecCitations.heaterStandard),
        clause('heater.wood-temperature', celsius(140), iec335.fromMemory('11', 'Wood of walls, ceiling and benches in the heating test.'), { isUncertain: true }),
        clause('timer.duration', hours(6), iec335.fromMemory('22', 'Heaters for private use run 6 hours at most.'), { when: 'private_use', isUncertain: true }),
        clause('timer.duration-shared', hours(12), iec335.fromMemory('22', 'Heaters in flats and hotels run 12 hours at most, then rest 6 hours.'), { when: 'shared_use', isUncertain: true }),
        clause('heater.remote-start-interlock', yes, iec335.fromMemory('22.105, 22.108', 'Remote start needs a cut-out that detects things on the heater, or a door-interlocked standby armed by hand.'), { when: 'remote_start', isUncertain: true }),
        clause('heater.clearances-to-nameplate', yes, iec335.fromMemory('7', 'The instructions give room volume, room height and clearances, and they are kept.')),
    ],
    notChecked: [
        'national versions and deviations of the parts named',
        'conformity of the heater, or of the prefabricated room as a whole, with its product standard',
        'earth-fault loop impedance, breaking capacity and discrimination of devices',
        'grouping of circuits and wiring in thermal insulation beyond the method named',
        'protective equipotential bonding',
        'building, fire and energy rules of the country',
    ],
};

/** The standard's own limit of scope, to be printed wherever the zones are. */
export const zoneScopeLine = `IEC 60364-7-703 ed. 2.0 (2004): ${documents.iec703.scope} The maker of the room states which of the two this is.`;
