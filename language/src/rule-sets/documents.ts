import type { Citation } from '../core/citation.js';
import type { RuleDocument } from './rule-set.js';

/** Citations of one document: by clause, or by clause from memory of it. */
interface Cite {
    (clause: string, text: string): Citation;
    readonly fromMemory: (clause: string, text: string) => Citation;
}

function citing(document: string, edition: string): Cite {
    const cite = (clause: string, text: string): Citation => ({ kind: 'standard', document, edition, clause, text });
    const fromMemory = (clause: string, text: string): Citation => ({ kind: 'standard', document, edition, clause, text, fromMemory: true });
    return Object.assign(cite, { fromMemory });
}

export const nec = citing('NEC', '2023');
export const irc = citing('IRC', '2018');
export const imc = citing('IMC', '2018');
export const ifgc = citing('IFGC', '2018');
export const ul875 = citing('UL 875', 'ed. 9 (2009)');
export const ada = citing('ADA Standards', '2010');
export const cbc = citing('CBC', '2019');
export const csa = citing('CSA C22.1', '2021');
export const iec703 = citing('IEC 60364-7-703', 'ed. 2.0 (2004)');
export const bs703 = citing('BS 7671', '2008 and later');
export const iee703 = citing('IEE Wiring Regulations', '16th ed.');
export const iec552 = citing('IEC 60364-5-52', 'ed. 3.0 (2009)');
export const iec554 = citing('IEC 60364-5-54', 'ed. 3.0 (2011)');
export const iec60898 = citing('IEC 60898-1', '2015');
export const iec335 = citing('IEC 60335-2-53', 'ed. 4 (2011)');
export const asce7 = citing('ASCE 7', '2016');
export const icc300 = citing('ICC 300', '2017 (draft)');
export const practice = (text: string): Citation => ({ kind: 'practice', text });

export const documents = {
    nec: { title: 'National Electrical Code (NFPA 70)', edition: '2023', scope: 'Electrical installations in the United States as locally adopted; fixed electric space heating is Article 424.' },
    irc: { title: 'International Residential Code', edition: '2018', scope: 'One- and two-family dwellings and townhouses: heaters of every fuel (M1902) and gas heaters (G2440).' },
    imc: { title: 'International Mechanical Code', edition: '2018', scope: 'Buildings other than one- and two-family dwellings and townhouses; section 914 is on heaters for these rooms.' },
    ifgc: { title: 'International Fuel Gas Code', edition: '2018', scope: 'Gas heaters in buildings other than one- and two-family dwellings and townhouses; section 615.' },
    ul875: { title: 'UL 875, electric dry-bath heaters', edition: 'ed. 9, 2009', scope: 'Listing of heaters up to 600 V for a field-built room, or with a prefabricated room, installed by the NEC.' },
    ada: { title: 'ADA Standards for Accessible Design', edition: '2010', scope: 'Accessible rooms and benches in places open to the public and in public buildings.' },
    cbc: { title: 'California Building Code, chapter 11B', edition: '2019', scope: 'Accessible rooms and benches in California.' },
    csa: { title: 'Canadian Electrical Code, Part I (CSA C22.1)', edition: '2021', scope: 'Electrical installations in Canada as locally adopted; rule 62-222 is on heaters for these rooms.' },
    iec703: {
        title: 'IEC 60364-7-703', edition: 'ed. 2.0, 2004',
        scope: 'Hot-air rooms and cabins erected on site. A prefabricated cabin that complies with an equipment standard of its own is outside this part.',
    },
    bs703: { title: 'BS 7671, section 703', edition: '2008 and later', scope: 'The national text of the same part: rooms and cabins containing heaters for hot-air bathing.' },
    iec552: { title: 'IEC 60364-5-52', edition: 'ed. 3.0, 2009', scope: 'Wiring systems: current-carrying capacities, temperature factors, voltage drop.' },
    iec554: { title: 'IEC 60364-5-54', edition: 'ed. 3.0, 2011', scope: 'Earthing arrangements and protective conductors.' },
    iec335: {
        title: 'IEC 60335-2-53', edition: 'ed. 4, 2011',
        scope: 'Electric heating appliances for hot-air rooms and infrared cabins, up to 20 kW, 250 V single-phase and 480 V otherwise, in homes, flats, hotels and the like.',
    },
} as const satisfies Readonly<Record<string, RuleDocument>>;
