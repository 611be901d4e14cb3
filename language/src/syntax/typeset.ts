import { propertyKinds } from './property-kinds.js';
import type { SyntaxProblem } from './problem.js';
import { dash, gap, oddSpaces, seeFigure, startsFigure, type SeenFigure } from './typeset-figures.js';

type Problem = Omit<SyntaxProblem, 'damages'>;

/** A text brought into the signs of the language, with the way back to the places of what was written. */
export interface PlainText {
    readonly text: string;
    readonly problems: readonly Problem[];
    /** Places whose facts cannot be read, because what was written can mean two things. */
    readonly damaged: readonly number[];
    /** Where something that starts, or ends, at a place of `text` does so in what was written. */
    readonly startOf: (offset: number) => number;
    readonly endOf: (offset: number) => number;
}

/** Signs without which a text is plain, so that the usual file is not looked through twice. */
const mayBeTypeset = /[^\0-\x7f]|''|\d,\d|deg(?![FC](?![A-Za-z]))|["'][ \t]*(?:X|x\d)|["']x|\d\.\d+\.\d/;

/**
 * Brings the signs of word processors, other keyboards and other countries (`34½"`, dashes, `68 °F`, `36''`, `8"×4"`, “texts”) into those of the
 * language before the text is lexed. Texts and remarks stay as they are.
 */
export function readTypeset(written: string): PlainText | undefined {
    return mayBeTypeset.test(written) ? new Scan(written).read() : undefined;
}

interface Piece { readonly at: number; readonly end: number; readonly from: number; readonly to: number }

const passedOver = /\/\/[^\r\n]*|"(?:[^"\\\r\n]|\\.)*"|[0-9]{4}-[0-9]{2}-[0-9]{2}(?![A-Za-z0-9_])|[A-Za-z_][A-Za-z0-9_]*(?:-[A-Za-z][A-Za-z0-9_]*)*/y;
const curlyText = /[\u201c\u201d\u201e\u201f\u00ab\u00bb]([^\u201c\u201d\u201e\u201f\u00ab\u00bb\r\n]*)[\u201c\u201d\u201f\u00ab\u00bb]|[\u201c\u201d\u201e\u201f\u00ab\u00bb]([^"\u201c\u201d\u201e\u201f\u00ab\u00bb\r\n]*)"|[\u2018\u2019\u201a\u201b\u2039\u203a]((?:[^\u2018\u2019\u201b\u2039\u203a\r\n]|\u2019(?=[A-Za-z]))*)[\u2018\u2019\u201b\u2039\u203a]|"([^"\u201c\u201d\r\n]*)[\u201c\u201d]/y;
const times = new RegExp(`(${gap}*)([xX\\u00d7\\u2715\\u2a2f])(${gap}*)(?=${startsFigure.source})`, 'y');
const isDash = new RegExp(`^(?!-)${dash}$`);
const isOddSpace = new RegExp(`^(?!\\u00a0)[${oddSpaces}]$`);
const isGap = new RegExp(`^${gap}$`);
const operators = /^(?:to|x|and|or|if|then|else)$/;

class Scan {
    private at = 0;
    private out = '';
    private copied = 0;
    private readonly pieces: Piece[] = [];
    private readonly problems: Problem[] = [];
    private readonly damaged: number[] = [];
    /** Kinds of the blocks that are open, innermost last. */
    private readonly blocks: string[] = [];
    /** First word of the fact that is read, and what stood last in it. */
    private key = '';
    private last: 'nothing' | 'key' | 'value' | 'operator' = 'nothing';
    private lastFigure: { readonly figure: SeenFigure; readonly at: number } | undefined;
    /** Open brackets, and whether each belongs to a name. */
    private readonly brackets: boolean[] = [];

    constructor(private readonly written: string) {}

    read(): PlainText {
        while (this.at < this.written.length) this.step();
        this.out += this.written.slice(this.copied);
        const { pieces } = this;
        const pieceBefore = (offset: number, touches: boolean): Piece | undefined => {
            let [low, high] = [0, pieces.length];
            while (low < high) {
                const middle = (low + high) >>> 1;
                const { at } = pieces[middle] ?? { at: Infinity };
                if (touches ? at <= offset : at < offset) low = middle + 1; else high = middle;
            }
            return pieces[low - 1];
        };
        return {
            text: this.out, problems: this.problems, damaged: this.damaged,
            startOf: offset => { const piece = pieceBefore(offset, true); return !piece ? offset : offset < piece.end ? piece.from : offset - piece.end + piece.to; },
            endOf: offset => { const piece = pieceBefore(offset, false); return !piece ? offset : offset <= piece.end ? piece.to : offset - piece.end + piece.to; },
        };
    }

    private step(): void {
        const { written, at } = this;
        const sign = written[at] ?? '';
        if (this.curly(sign)) return;
        const figure = startsFigure.test(sign) && !isDate(written, at) ? seeFigure(written, at, { takesList: this.takesList }) : undefined;
        if (figure) { this.figure(figure); return; }
        passedOver.lastIndex = at;
        const passed = passedOver.exec(written)?.[0];
        if (passed !== undefined) {
            this.at += passed.length;
            if (!passed.startsWith('//')) this.note(passed);
            return;
        }
        if (isDash.test(sign) && this.dash(sign)) return;
        if (/[\u00d7\u2715\u2a2f]/.test(sign)) { this.unclearTimes(); return; }
        if (isOddSpace.test(sign)) { this.space(); return; }
        this.at++;
        if (sign === '{') this.blocks.push(this.key);
        if (sign === '}') this.blocks.pop();
        if (/[\r\n;{}]/.test(sign)) this.endFact();
        else if (sign === '(') { this.brackets.push(/[A-Za-z0-9_]/.test(written[at - 1] ?? '')); this.last = 'operator'; }
        else if (sign === ')') { this.brackets.pop(); this.note(')'); }
        else if (/[-+*/,=<>]/.test(sign)) this.last = 'operator';
        else if (!isGap.test(sign)) this.lastFigure = undefined;
    }

    private get takesList(): boolean { return this.brackets.at(-1) === true || propertyKinds(this.key, this.blocks.at(-1)).takesList; }
    private endFact(): void {
        this.key = '';
        this.last = 'nothing';
        this.lastFigure = undefined;
        this.brackets.length = 0;
    }
    private note(word: string): void {
        if (this.last === 'nothing') { this.key = word; this.last = 'key'; } else this.last = operators.test(word) ? 'operator' : 'value';
        this.lastFigure = undefined;
    }

    private figure(figure: SeenFigure): void {
        const { at } = this;
        const seen = this.written.slice(at, figure.end);
        // A unit nobody knows stands behind it: that has its own message.
        const isCutOff = !figure.hasUnit && /[A-Za-z_]/.test(this.written[figure.end] ?? '');
        if (this.brackets.at(-1) === true && /^\d+,\d/.test(seen)) { this.at += /^\d+/.exec(seen)?.[0].length ?? 1; this.last = 'value'; return; }
        const { oddity, written } = figure;
        if (oddity && !isCutOff) {
            const place = { start: at, end: figure.end };
            const fix = { title: `Write ${written}`, edits: [{ ...place, newText: written }] };
            switch (oddity.kind) {
                case 'curly': this.problems.push({ id: 'curly-quote', ...place, message: `${seen} has the curly quotes of a word processor. Write ${written}.`, fix }); break;
                case 'certain': this.problems.push({ id: 'typeset-sign', ...place, message: `${seen} has ${oddity.has}; ${oddity.need}. Write ${written}.`, fix }); break;
                case 'comma': this.problems.push({ id: 'decimal-comma', ...place, message: `${seen} has ${oddity.has}; ${oddity.need}. Write ${written}.`, fix }); break;
                case 'uncertain': case 'uncertain-comma': this.unclear(oddity.kind === 'uncertain' ? 'unclear-sign' : 'decimal-comma', at, figure.end, `${seen} ${oddity.why}`); break;
                default: oddity satisfies never;
            }
        }
        if (oddity) this.replace(figure.end, written); else this.at = figure.end;
        this.last = 'value';
        this.lastFigure = { figure, at };
        this.times();
    }

    /** The sign between the two figures of a size. `2 × 3"` may be a product, so both have to be lengths. */
    private times(): void {
        times.lastIndex = this.at;
        const [all, before = '', sign = '', after = ''] = times.exec(this.written) ?? [];
        const isUsual = sign === 'x' && before !== '' && after !== '';
        const left = this.lastFigure?.figure;
        if (all === undefined || isUsual || !left) return;
        const next = seeFigure(this.written, this.at + all.length, { takesList: false });
        if (!left.hasUnit || !next?.hasUnit) return;
        const start = this.at + before.length;
        const newText = `${before === '' ? ' ' : ''}x${after === '' ? ' ' : ''}`;
        const size = `${left.written} x ${next.written}`;
        this.problems.push({
            id: 'typeset-sign', start, end: start + 1, message: `‘${sign}’ ${sign === 'x' ? 'touches a figure' : 'is another sign than x'}; the figures of a size have x between spaces. Write ${size}.`,
            fix: { title: `Write ${size}`, edits: [{ start, end: start + 1, newText }] },
        });
        this.at = start;
        this.replace(start + 1, newText);
        this.last = 'operator';
        this.lastFigure = undefined;
    }
    private unclearTimes(): void {
        const { at } = this;
        this.unclear('unclear-sign', at, at + 1, '‘\u00d7’ can divide the figures of a size or multiply. Write x between spaces for a size, such as 8" x 4", and * to multiply.');
        this.replace(at + 1, `${isGap.test(this.written[at - 1] ?? '') ? '' : ' '}x${isGap.test(this.written[at + 1] ?? '') ? '' : ' '}`);
        this.last = 'operator';
    }

    /** A dash or minus sign outside of a figure. */
    private dash(sign: string): boolean {
        if (this.last === 'nothing') return false;
        const { at, written } = this;
        const isLeft = isGap.test(written[at - 1] ?? ' ');
        const isRight = isGap.test(written[at + 1] ?? '');
        const isMinus = sign === '\u2212';
        const put = { title: 'Write a hyphen', edits: [{ start: at, end: at + 1, newText: '-' }] };
        const isSpaced = this.last === 'value' && isLeft && isRight;
        const isSign = (this.last === 'operator' || this.last === 'key') && !isRight;
        // A signed figure behind another word is one mistake, which is told where hyphens are.
        if (this.last === 'value' && isLeft && !isRight && !this.lastFigure) { this.replace(at + 1, '-'); return true; }
        if (isSign || (isSpaced && (isMinus || !propertyKinds(this.key, this.blocks.at(-1)).takesRange))) {
            this.problems.push({ id: 'typeset-sign', start: at, end: at + 1, message: `‘${sign}’ is ${isMinus ? 'a typeset minus sign' : 'a dash'}; a hyphen is needed to subtract. Write -.`, fix: put });
        } else {
            this.unclear('unclear-sign', at, at + 1, `‘${sign}’ can mean a range, a subtraction or a join. Write to for a range, a hyphen between spaces to subtract, and a hyphen without spaces to join.`);
        }
        this.replace(at + 1, isSign ? '-' : `${isLeft ? '' : ' '}-${isRight ? '' : ' '}`);
        this.last = 'operator';
        this.lastFigure = undefined;
        return true;
    }

    private space(): void {
        const { at } = this;
        let end = at + 1;
        while (isOddSpace.test(this.written[end] ?? '')) end++;
        this.problems.push({
            id: 'typeset-sign', start: at, end, message: 'A thin or wide space of a word processor stands here; a plain space is needed. Write one.',
            fix: { title: 'Write a plain space', edits: [{ start: at, end, newText: ' ' }] },
        });
        this.replace(end, ' ');
    }

    /** A text in curly or angle quotes. */
    private curly(sign: string): boolean {
        if (!/["\u2018-\u201f\u00ab\u00bb\u2039\u203a]/.test(sign)) return false;
        if (sign === '"') { passedOver.lastIndex = this.at; if (passedOver.test(this.written)) return false; }
        curlyText.lastIndex = this.at;
        const match = curlyText.exec(this.written);
        if (!match) return false;
        const [all] = match;
        const inner: readonly (string | undefined)[] = match.slice(1);
        const straight = `"${(inner.find(text => text !== undefined) ?? '').replace(/\\(?!["\\])|(?<!\\)"/g, '\\$&')}"`;
        const end = this.at + all.length;
        this.problems.push({
            id: 'curly-quote', start: this.at, end, message: `${all} stands in the quotes of a word processor; straight quotes are needed. Write ${straight}.`,
            fix: { title: `Write ${straight}`, edits: [{ start: this.at, end, newText: straight }] },
        });
        this.replace(end, straight);
        this.note('""');
        return true;
    }

    private unclear(id: Problem['id'], start: number, end: number, message: string): void {
        this.problems.push({ id, start, end, message });
        this.damaged.push(start);
    }
    private replace(end: number, text: string): void {
        this.out += this.written.slice(this.copied, this.at);
        this.pieces.push({ at: this.out.length, end: this.out.length + text.length, from: this.at, to: end });
        this.out += text;
        this.at = this.copied = end;
    }
}

const date = /[0-9]{4}-[0-9]{2}-[0-9]{2}(?![A-Za-z0-9_])/y;
function isDate(text: string, at: number): boolean {
    date.lastIndex = at;
    return date.test(text);
}
