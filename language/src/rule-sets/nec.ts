import { nec } from './documents.js';

/** Share of the load of fixed electric space heating that conductor and device are sized for. */
export const continuousFactor = 1.25;
/** Largest load of one set of resistance elements, and largest device of one, A. */
export const elementSetLimitA = 48;
export const elementSetDeviceA = 60;
/** Advice on voltage drop, as a share of the supply voltage. */
export const branchDropLimit = 0.03;
export const totalDropLimit = 0.05;

export const necCitations = {
    continuous: nec.fromMemory('424.4(B)', 'Fixed electric space heating is a continuous load: branch circuits are sized at 125 % of it (424.3(B) up to 2017).'),
    continuousDevice: nec('210.20(A)', 'The device is rated at no less than 125 % of a continuous load.'),
    elementSet: nec.fromMemory('424.22(B)', 'Resistance elements of equipment rated above 48 A are subdivided into loads of 48 A at most.'),
    elementSetDevice: nec.fromMemory('424.22(B)', 'Resistance elements are protected at 60 A at most.'),
    disconnect: nec('424.19', 'A disconnecting means within sight of the heater, or one that can be locked open.'),
    terminals: nec.fromMemory('110.14(C)(1)', 'Terminals count as 60 °C up to 100 A unless marked 75 °C.'),
    branchDrop: nec('210.19(A), informational note', 'A branch circuit losing no more than 3 % gives reasonable operation.'),
    totalDrop: nec.fromMemory('210.19(A), informational note', 'Feeder and branch circuit together losing no more than 5 % give reasonable operation.'),
} as const;
