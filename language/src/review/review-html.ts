import type { Severity } from '../core/finding.js';
import type { Span } from '../core/span.js';
import { severities } from '../renderings/findings-text.js';
import { printable } from '../renderings/printable.js';
import { showCount } from '../renderings/show-figures.js';
import type { FigureGroup, ReviewFigure } from './review-figures.js';
import type { ReviewFinding, ReviewPlace, ReviewReport, ReviewSignOff } from './review-report.js';
import { reviewStyles } from './review-styles.js';
import { memoryOf, standingSentence } from './review-tables.js';

/** Markup of one report, and the places its numbered links lead to. */
export interface ReviewMarkup { readonly title: string; readonly body: string; readonly places: readonly Span[] }

/** A link to where something is written, under other words where its file was named just before. */
type ShowPlace = (own: ReviewPlace, words?: string) => string;

/** Every text of a job goes through here: nothing of it is markup, and nothing turns the direction of writing. */
const text = (value: string): string => printable(value.replaceAll(/\s*[\r\n]+\s*/g, ' ')).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;').replaceAll('\'', '&#39;');

const severityTitles: Readonly<Record<Severity, string>> = { error: 'Errors', warning: 'Warnings', info: 'Infos', hint: 'Hints' };

/** The report as markup without a frame, for a page that has one. */
export function reviewMarkup(report: ReviewReport): ReviewMarkup {
    const places: Span[] = [];
    const place: ShowPlace = (own, words = own.text) => `<span class="place" data-place="${places.push(own.at) - 1}">${text(words)}</span>`;
    return { title: `${report.job.title}: review`, body: [header(report), ...sections(report, place)].join('\n'), places };
}

/** Reports as one page that needs nothing else: to print, to send, to keep. */
export function reviewHtml(reports: readonly ReviewReport[]): string {
    const [first] = reports;
    return [
        '<!DOCTYPE html>', '<html lang="en">', '<head>', '<meta charset="utf-8">', '<meta name="viewport" content="width=device-width, initial-scale=1">',
        '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; style-src \'unsafe-inline\'">',
        `<title>${text(first && reports.length === 1 ? `${first.job.title}: review` : 'Review')}</title>`, `<style>\n${reviewStyles}</style>`, '</head>', '<body>',
        ...reports.map(report => `<main class="review">\n${reviewMarkup(report).body}\n</main>`), '</body>', '</html>', '',
    ].join('\n');
}

function header(report: ReviewReport): string {
    const { job, day, fingerprint, counts } = report;
    const facts: readonly (readonly [string, string | undefined])[] = [['Job', job.name], ['Number', job.number], ['Revision', job.revision ?? 'none stated'], ['Drawn by', job.drawnBy], ['File', job.file], ['Made', day], ['Fingerprint', fingerprint ?? 'none: part of the job cannot be read']];
    return [
        '<header>', `<p class="kind">Review before cutting</p>`, `<h1>${text(job.title)}</h1>`,
        `<dl class="stamp">${facts.flatMap(([name, value]) => value === undefined ? [] : [`<div><dt>${name}</dt><dd${name === 'Fingerprint' ? ' class="mono"' : ''}>${text(value)}</dd></div>`]).join('')}</dl>`,
        `<p class="standing ${counts.error > 0 ? 'stop' : counts.warning > 0 ? 'look' : 'quiet'}">${text(standingSentence(report))}</p>`,
        '</header>',
    ].join('\n');
}

function sections(report: ReviewReport, place: ShowPlace): readonly string[] {
    const { changes, notChecked, sources, glance } = report;
    let number = 0;
    const section = (id: string, title: string, content: readonly string[]): string => `<section id="${id}">\n<h2><span class="no">${++number}</span> ${title}</h2>\n${content.join('\n')}\n</section>`;
    return [
        section('glance', 'At a glance', [`<dl class="glance">${glance.map(({ title, value }) => `<div><dt>${text(title)}</dt><dd>${text(value)}</dd></div>`).join('')}</dl>`]),
        section('findings', 'Findings', findings(report, place)),
        section('waivers', 'Accepted by waiver', waivers(report, place)),
        ...(changes ? [section('changes', `Changes since ${text(changes.since)}`, changed(changes))] : []),
        section('figures', 'Figures to sign', ['<p class="lead">Tick what you looked at. Figures with a box are acted on outside the drawing office; the rest says how they came about.</p>', ...report.figures.map(group => figures(group, place))]),
        section('not-checked', 'Not checked', [
            list(notChecked.notRun), ...notChecked.bySet.map(({ title, items }) => `<h3>${text(title)}: in its documents, and not checked</h3>\n${list(items)}`),
        ]),
        section('sources', 'Sources and editions', [
            ...sources.ruleSets.map(({ title, scope, documents, clauses, clausesFromMemory, isOfSettings }) => [
                `<h3>${text(title)}</h3>`, `<p>${text(scope)}${isOfSettings ? ' Named by the settings of the project, as the job names none.' : ''}</p>`,
                list(documents.map(document => `${document.title}, ${document.edition}. ${document.scope}`)), ...(clausesFromMemory > 0 ? [`<p class="memory">${text(memoryOf(clauses, clausesFromMemory))}</p>`] : []),
            ].join('\n')),
            ...(sources.manuals.length > 0 ? ['<h3>Heater manuals</h3>', list(sources.manuals), '<p>The manual that comes with the heater goes before everything here.</p>'] : []),
            ...(sources.catalogues.length > 0 ? ['<h3>Catalogues</h3>', list(sources.catalogues)] : []),
            '<h3>Cited in this report</h3>', table(['Source', 'What it says', 'Used by'], sources.cited.map(({ source, says, isFromMemory, usedBy }) => [`${text(source)}${isFromMemory ? ' <b class="tag">from memory</b>' : ''}`, says === source ? '' : text(says), text(usedBy.join(', '))])),
        ]),
        section('cautions', 'Cautions', [list(report.cautions)]),
        section('sign-off', 'Sign-off', signOff(report, place)),
    ];
}

const list = (items: readonly string[]): string => items.length === 0 ? '' : `<ul>${items.map(item => `<li>${text(item)}</li>`).join('')}</ul>`;
const table = (heads: readonly string[], rows: readonly (readonly string[])[], kind = ''): string => rows.length === 0 ? '' : [
    `<table${kind === '' ? '' : ` class="${kind}"`}>`, `<thead><tr>${heads.map(head => `<th scope="col">${head}</th>`).join('')}</tr></thead>`, `<tbody>${rows.map(row => `<tr>${row.map(one => `<td>${one}</td>`).join('')}</tr>`).join('\n')}</tbody>`, '</table>',
].join('\n');

function findings({ findings: all }: ReviewReport, place: ShowPlace): readonly string[] {
    if (all.length === 0) return ['<p>No finding is open. That is no approval: see what was not checked.</p>'];
    return severities.flatMap(severity => {
        const own = all.filter(finding => finding.severity === severity);
        return own.length === 0 ? [] : [`<h3 class="${severity}">${severityTitles[severity]} <span class="count">${own.length}</span></h3>`, ...own.map(one => finding(one, place))];
    });
}

function finding({ severity, rule, message, place: own, measured, required, source, sourceSays, isFromMemory, usualSeverity, isNew }: ReviewFinding, place: ShowPlace): string {
    const facts: readonly (readonly [string, string])[] = [
        ...(measured === undefined ? [] : [['Measured', text(measured)] as const]), ...(required === undefined ? [] : [['Required', text(required)] as const]),
        ...(source === undefined ? [] : [['Source', `${text(source)}${isFromMemory ? ' <b class="tag">figure from memory</b>' : ''}${sourceSays === undefined ? '' : `<br><small>${text(sourceSays)}</small>`}`] as const]),
        ...(usualSeverity === undefined ? [] : [['Severity', `${text(severity)} by the settings of the project, by itself ${text(usualSeverity)}`] as const]),
    ];
    return [
        `<article class="finding ${severity}">`, `<p class="head"><b class="severity">${severity}</b> <code>${text(rule)}</code>${isNew ? ' <b class="tag new">new</b>' : ''} ${place(own)}</p>`, `<p class="message">${text(message)}</p>`,
        `<dl>${facts.map(([name, value]) => `<div${name === 'Source' || name === 'Severity' ? ' class="wide"' : ''}><dt>${name}</dt><dd>${value}</dd></div>`).join('')}</dl>`, '</article>',
    ].join('\n');
}

function waivers({ waivers: all }: ReviewReport, place: ShowPlace): readonly string[] {
    if (all.length === 0) return ['<p>Nothing is waived.</p>'];
    return [table(['Finding', 'Because', 'By', 'Until', 'Standing'], all.map(({ rule, on, because, by, until, standing, accepts, place: own }) => [
        `<code>${text(rule)}</code>${on === undefined ? '' : ` on ${text(on)}`}<br>${place(own)}`, `${text(because)}${accepts.map(message => `<br><small>${text(message)}</small>`).join('')}`, text(by), text(until), standing === 'in force' ? text(standing) : `<b>${text(standing)}</b>`,
    ]), 'waivers')];
}

function changed({ isNewJob, groups }: NonNullable<ReviewReport['changes']>): readonly string[] {
    if (isNewJob) return ['<p>This job is new.</p>'];
    if (groups.length === 0) return ['<p>No change of meaning.</p>'];
    return ['<p class="lead">New findings are marked <b class="tag new">new</b> above.</p>', ...groups.flatMap(({ title, rows }) => [`<h3>${text(title)} <span class="count">${rows.length}</span></h3>`, table(['What', 'How', 'Detail', 'Where'], rows.map(({ what, how, detail, place = '' }) => [what, how, detail, place].map(text)), 'changes')])];
}

/** Lines of one file behind its name: `skerry.hotroom:107, 109, 110`. */
function lines(from: readonly ReviewPlace[], place: ShowPlace): string {
    const fileOf = (own: ReviewPlace | undefined): string | undefined => own?.text.replace(/:\d+$/, '');
    return from.map((own, i) => fileOf(from[i - 1]) === fileOf(own) ? `, ${place(own, own.text.split(':').at(-1))}` : `${i === 0 ? '' : '<br>'}${place(own)}`).join('');
}

function figures({ title, figures: all, written }: FigureGroup, place: ShowPlace): string {
    const row = ({ isToSign, title: name, value, how, from, source }: ReviewFigure): readonly string[] => [
        isToSign ? '<span class="box" role="img" aria-label="to tick"></span>' : '', text(name), isToSign ? `<b>${text(value)}</b>` : text(value),
        [...(how === '' ? [] : [text(how)]), ...(source === undefined ? [] : [`<small>${text(source)}</small>`])].join('<br>'), lines(from, place),
    ];
    return [`<h3>${text(title)}</h3>`, table(['<span class="unseen">Tick</span>', 'Figure', 'Value', 'How it came about', 'From'], all.map(row), 'figures'), ...(written.length > 0 ? [`<p class="written">Also written: ${text(written.join('; '))}.</p>`] : [])].join('\n');
}

const standings: Readonly<Record<ReviewSignOff['standing'], string>> = { matches: 'unchanged since', 'changed since': 'changed since it was signed', 'another revision': 'another revision; its model is not at hand', 'cannot be told': 'cannot be told while part of the job cannot be read' };

function signOff({ job, fingerprint, signOffs, counts }: ReviewReport, place: ShowPlace): readonly string[] {
    const line = '<td class="line"></td>';
    return [
        signOffs.length === 0 ? '<p>Nobody has signed this job yet.</p>' : table(['Revision', 'By', 'Date', 'Fingerprint', 'Standing'], signOffs.map(({ revision, by, date, fingerprint: own, standing, place: at }) => [
            text(revision), by === '' ? '<b>nobody</b>' : text(by), text(date), `<span class="mono">${text(own)}</span><br>${place(at)}`, standing === 'changed since' ? `<b>${standings[standing]}</b>` : standings[standing],
        ])),
        `<div class="sign"><h3>Revision ${text(job.revision ?? '______')}, fingerprint <span class="mono">${text(fingerprint ?? 'none')}</span></h3>`,
        `<p>A signature says that somebody looked at this report and at what it says was not checked. It is no approval by an authority, and none of the heater, its circuit or the building.${counts.error > 0 ? ` The job stands with ${showCount(counts.error, 'error')}: do not sign it for cutting.` : ''}</p>`,
        `<table class="blank"><thead><tr><th scope="col">Looked at by</th><th scope="col">Name and office</th><th scope="col">Date</th><th scope="col">Signature</th></tr></thead><tbody>${['Technical designer', 'Reviewer', 'Licensed electrician, for the circuit'].map(who => `<tr><th scope="row">${who}</th>${line}${line}${line}</tr>`).join('')}</tbody></table>`,
        '<p>Write the signature into the job as a <code>sign_off</code> with this fingerprint: a change after it is then a finding.</p></div>',
    ];
}
