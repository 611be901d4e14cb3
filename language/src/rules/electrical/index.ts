import type { Rule } from '../rule.js';
import { ambientBeyondTable } from './ambient-beyond-table.js';
import { capacityNotStated } from './capacity-not-stated.js';
import { circuitFactOfOtherRules } from './circuit-fact-of-other-rules.js';
import { circuitMissing } from './circuit-missing.js';
import { circuitNotComplete } from './circuit-not-complete.js';
import { circuitWithoutSegments } from './circuit-without-segments.js';
import { conductorBeyondTable } from './conductor-beyond-table.js';
import { deviceAboveManual } from './device-above-manual.js';
import { deviceBeyondTable } from './device-beyond-table.js';
import { deviceNotNextSize } from './device-not-next-size.js';
import { deviceTooLarge } from './device-too-large.js';
import { deviceTooSmall } from './device-too-small.js';
import { disconnectNotInSight } from './disconnect-not-in-sight.js';
import { disconnectNotStated } from './disconnect-not-stated.js';
import { elementSetsNotStated } from './element-sets-not-stated.js';
import { equipmentInZoneOne } from './equipment-in-zone-one.js';
import { existingConductorTooSmall } from './existing-conductor-too-small.js';
import { existingDeviceTooLarge } from './existing-device-too-large.js';
import { existingDeviceTooSmall } from './existing-device-too-small.js';
import { heaterFedTwice } from './heater-fed-twice.js';
import { heaterNotSubdivided } from './heater-not-subdivided.js';
import { heatersTogetherExceedCapacity } from './heaters-together-exceed-capacity.js';
import { installationMethodMissing } from './installation-method-missing.js';
import { lightRatingMissing } from './light-rating-missing.js';
import { lightRatingTooLow } from './light-rating-too-low.js';
import { manualSilentOnCircuit } from './manual-silent-on-circuit.js';
import { noElectricalRules } from './no-electrical-rules.js';
import { outsideHeaterStandard } from './outside-heater-standard.js';
import { receptacleInside } from './receptacle-inside.js';
import { supplyCapacityTooSmall } from './supply-capacity-too-small.js';
import { supplyMissing } from './supply-missing.js';
import { supplyNotOnSite } from './supply-not-on-site.js';
import { supplyWrongPhase } from './supply-wrong-phase.js';
import { supplyWrongVoltage } from './supply-wrong-voltage.js';
import { twoElectricalFamilies } from './two-electrical-families.js';
import { voltageDropHigh } from './voltage-drop-high.js';
import { waterProtectionTooLow } from './water-protection-too-low.js';
import { zoneCableRatingTooLow } from './zone-cable-rating-too-low.js';
import { zoneRatingNotStated } from './zone-rating-not-stated.js';
import { zoneRatingTooLow } from './zone-rating-too-low.js';

/** Rules of this family, by id. */
export const electricalRules: readonly Rule[] = [
    ambientBeyondTable, capacityNotStated, circuitFactOfOtherRules, circuitMissing, circuitNotComplete, circuitWithoutSegments,
    conductorBeyondTable, deviceAboveManual, deviceBeyondTable, deviceNotNextSize, deviceTooLarge, deviceTooSmall, disconnectNotInSight,
    disconnectNotStated, elementSetsNotStated, equipmentInZoneOne, existingConductorTooSmall, existingDeviceTooLarge,
    existingDeviceTooSmall, heaterFedTwice, heaterNotSubdivided, heatersTogetherExceedCapacity, installationMethodMissing,
    lightRatingMissing, lightRatingTooLow, manualSilentOnCircuit, noElectricalRules, outsideHeaterStandard, receptacleInside,
    supplyCapacityTooSmall, supplyMissing, supplyNotOnSite, supplyWrongPhase, supplyWrongVoltage, twoElectricalFamilies, voltageDropHigh,
    waterProtectionTooLow, zoneCableRatingTooLow, zoneRatingNotStated, zoneRatingTooLow,
];
