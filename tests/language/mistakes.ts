import type { CalendarDate } from '../../language/src/vocabulary/values.js';

/** One text per mistake of the language, with the findings it must give and, where a fix is offered, what the text holds after it. */
export const mistakes: Readonly<Record<string, { readonly text: string; readonly fixed?: string; readonly others?: Readonly<Record<string, string>>; readonly today?: CalendarDate }>> = {
    'unexpected-character': { text: `
        job a {
            rules us_dwelling
            site { width = 96"; depth 96"; floor tile; ceiling 7'6" }
            //           ^ error: ‘=’ compares two values. A fact is a word and then its value, such as top 37".
        }` },
    'text-not-closed': { text: `
        job a {
            rules us_dwelling
            number "2417
            //     ^^^^^ 💡 error: This text is not closed. A text ends with " on the line it begins on.
        }`, fixed: 'number "2417"' },
    'curly-quote': { text: `
        job a {
            rules us_dwelling
            site { width 96"; depth 96"; floor tile; ceiling 7\u20196\u201d }
            //                                               ^^^^ 💡 warning: 7\u20196\u201d has the curly quotes of a word processor. Write 7'6".
        }`, fixed: 'ceiling 7\'6"' },
    'typeset-sign': { text: `
        job a {
            rules us_dwelling
            site { width 96\u00bd"; depth 96"; floor tile; ceiling 7'6" }
            //           ^^^^ 💡 warning: 96\u00bd" has the fraction sign \u00bd; a fraction is written with a slash. Write 96-1/2".
        }`, fixed: 'width 96-1/2"' },
    'unclear-sign': { text: `
        job a {
            rules us_dwelling
            site { width 96"\u201398"; depth 96"; floor tile; ceiling 7'6" }
            //              ^ error: ‘\u2013’ can mean a range, a subtraction or a join. Write to for a range, a hyphen between spaces to subtract, and a hyphen without spaces to join.
        }` },
    'file-too-large': { text: `
        job a {
            rules us_dwelling
            site { width ${'('.repeat(51)}96"${')'.repeat(51)}; depth 96" }
            //                                                             ^ error: Here 51 brackets stand inside each other; Hotroom reads up to 50. Split the calculation. Nothing of this file is read until then.
        }` },
    'negative-length': { text: `
        job a {
            rules us_dwelling
            site { width -96"; depth 96"; floor tile; ceiling 7'6" }
            //           ^^^^ error: -96" is negative; a length of 0 or more is needed. Write it without the sign, and a distance from the side it is measured from.
        }` },
    'decimal-comma': { text: `
        job a {
            rules us_dwelling
            site { width 96"; depth 96"; floor tile; ceiling 7'6"; capacity 2,5 A }
            //                                                              ^^^^^ 💡 error: 2,5 A has a decimal comma; the decimal mark is a point. Write 2.5 A.
        }`, fixed: 'capacity 2.5 A' },
    'unknown-unit': { text: `
        job a {
            rules us_dwelling
            site { width 96cubit; depth 96"; floor tile; ceiling 7'6" }
            //           ^^^^^^^ error: cubit is not a unit. Units are…
        }` },
    'inch-mark-missing': { text: `
        job a {
            rules us_dwelling
            site { width 8'6; depth 96"; floor tile; ceiling 7'6" }
            //           ^^^ 💡 error: 8'6 lacks its inch mark. Write 8'6".
        }`, fixed: 'width 8\'6"' },
    'hyphen-spacing': { text: `
        job a {
            rules us_dwelling
            site { width 96" -2"; depth 96"; floor tile; ceiling 7'6" }
            //               ^ 💡 error: A hyphen subtracts when it has a space on both sides, and joins when it has none and stands inside one figure or name. Put spaces round it.
        }`, fixed: 'width 96" - 2"' },
    'value-missing': { text: `
        job a {
            rules us_dwelling
            site { width 96" +; depth 96"; floor; ceiling 7'6" }
            //               ^ error: A value is missing after ‘+’.
            //                             ^^^^^ error: floor lacks its value: tile, concrete, vinyl, stone, other_waterproof, wood or carpet.
        }` },
    'bracket-not-closed': { text: `
        job a {
            rules us_dwelling
            site { width (96" - 2"; depth 96"; floor tile; ceiling 7'6" }
            //           ^ error: This bracket is not closed. Add ).
        }` },
    'bracket-without-partner': { text: `
        job a {
            rules us_dwelling
            site { width 96" - 2"); depth 96"; floor tile; ceiling 7'6" }
            //                   ^ error: This bracket was never opened. Remove it.
        }` },
    'block-not-closed': { text: `
        job a {
            rules us_dwelling
            site {
        //@ 5-9 💡 error: ‘site’ is not closed. Put } after its last fact.
                width 96"; depth 96"; floor tile; ceiling 7'6"
            sign s { says warning }
        }`, fixed: 'ceiling 7\'6"\n    }' },
    'brace-without-partner': { text: `
        job a {
            rules us_dwelling
        }
        }
        //@ 1-2 💡 error: This } closes nothing. Remove it.`, fixed: 'rules us_dwelling\n}\n' },
    'brace-missing': { text: `
        job a {
            rules us_dwelling
            site
        //@ 5-9 💡 error: The facts of this site stand in braces. Put { at the end of ‘site’.
                width 96"; depth 96"; floor tile; ceiling 7'6"
            }
        }`, fixed: 'site {' },
    'brace-on-its-own-line': { text: `
        job a {
            rules us_dwelling
            site
            {
        //@ 5-6 💡 error: The { of a block stands on the line of its header.
                width 96"; depth 96"; floor tile; ceiling 7'6"
            }
        }`, fixed: 'site {' },
    'line-without-a-word': { text: `
        job a {
            rules us_dwelling
            site { 96"; depth 96"; floor tile; ceiling 7'6" }
            //     ^^^ error: A line begins with a word that says what it is; ‘96"’ stands there. Add the word, such as top 37".
        }` },
    'two-facts-on-one-line': { text: `
        job a {
            rules us_dwelling
            site { width 96" depth 96"; floor tile; ceiling 7'6" }
            //               ^^^^^ 💡 error: ‘depth’ begins a fact of its own. Put it on its own line or after a semicolon.
        }`, fixed: 'width 96"; depth 96"' },
    'part-out-of-place': { text: `
        job a {
            rules us_dwelling
            site { width (96" 2"); depth 96"; floor tile; ceiling 7'6" }
            //                ^^ error: ‘2"’ does not belong in these brackets; one calculation stands there.
        }` },
    'kind-missing': { text: `
        job a {
            rules us_dwelling
            { width 96"; depth 96"; floor tile; ceiling 7'6" }
        //@ 5-6 💡 error: This block does not say what it is. Put site before {.
        }`, fixed: 'site { width' },
    'figure-unreadable': { text: `
        job a {
            rules us_dwelling
            site { width 3/0"; depth 96"; floor tile; ceiling 7'6" }
            //           ^^^^ error: 3/0" cannot be read as a figure: a fraction has no zero below.
        }` },
    'division-by-zero': { text: `
        job a {
            rules us_dwelling
            site { width 96" / (2 - 2); depth 96"; floor tile; ceiling 7'6" }
            //                 ^^^^^^^ error: This divides by zero.
        }` },
    'mixed-dimensions': { text: `
        job a {
            rules us_dwelling
            site { width 36" + 240 V; depth 96"; floor tile; ceiling 7'6" }
            //           ^^^^^^^^^^^ error: ‘+’ stands between a length and a voltage; both sides must be of one kind.
        }` },
    'name-in-calculation': { text: `
        job a {
            rules us_dwelling
            site { width 2 * room.wdth; depth 96"; floor tile; ceiling 7'6" }
            //               ^^^^^^^^^ 💡 error: Nothing is called ‘room.wdth’ here. Is room.width meant?
            room { width 72"; depth 72"; height 84"; system S }
        }
        catalogue c { panel_system S { lining s 3/4"; core s 2"; modules 24"; engagement 3/8"; corners sides; plate s; plate_set_in 0" }; stock s { section 3/4" x 3 1/2"; lengths 8' } }`, fixed: 'width 2 * room.width' },
    'part-not-expected': { text: `
        job a {
            rules us_dwelling
            site { width 96" 95"; depth 96"; floor tile; ceiling 7'6" }
            //               ^^^ error: A comma is missing before 95": width takes lengths divided by commas, such as 24", 18", 12".
        }` },
    'length-not-exact': { text: `
        job a {
            rules us_dwelling
            site { width 1 m / 7; depth 96"; floor tile; ceiling 7'6" }
            //           ^^^^^^^ error: 1 m / 7 is no length a shop can set: it falls between the finest marks kept here. The nearest are 5 5/8" and 142.9 mm.
        }` },
    'unit-missing': { text: `
        job a {
            rules us_dwelling
            site { width 96; depth 96"; floor tile; ceiling 7'6" }
            //           ^^ error: 96 has no unit; a length, such as 34 3/4" or 885 mm, is wanted.
        }` },
    'value-of-another-kind': { text: `
        job a {
            rules us_dwelling
            site { width 96"; depth 96"; floor tiel; ceiling 7'6" }
            //                                 ^^^^ 💡 error: ‘tiel’ is not what floor takes: tile, concrete, vinyl, stone, other_waterproof, wood or carpet. Is tile meant?
        }`, fixed: 'floor tile' },
    'unknown-word': { text: `
        job a {
            rules us_dwelling
            site { widht 96"; depth 96"; floor tile; ceiling 7'6" }
            //     ^^^^^ 💡 error: ‘widht’ is not known in a site. Is width meant?
        }`, fixed: 'site { width 96"' },
    'unknown-name': { text: `
        use "catalogue/skerry.hotroom"
        job a {
            rules us_dwelling
            room { system Skery; width 72"; depth 72"; height 7'0" }
            //            ^^^^^ 💡 error: There is no panel system called Skery. Is Skerry meant? There are Skerry and SkerryMetric.
        }`, fixed: 'system Skerry' },
    'fact-repeated': { text: `
        job a {
            rules us_dwelling
            site { width 96"; depth 96"; floor tile; ceiling 7'6"; floor vinyl }
            //                                                     ^^^^^ 💡 error: floor is written twice; one of the two has to go.
        }`, fixed: 'ceiling 7\'6";  }' },
    'block-repeated': { text: `
        job a {
            rules us_dwelling
            site { width 96"; depth 96"; floor tile; ceiling 7'6" }
            site { width 96"; depth 96"; floor tile; ceiling 7'6" }
        //@ 5-9 error: There is one site in a job; this is the second.
        }` },
    'fact-missing': { text: `
        job a {
            rules us_dwelling
            site { width 96"; depth 96"; floor tile }
        //@ 5-9 error: The site lacks ceiling: lengths divided by commas, such as 24", 18", 12".
        }` },
    'name-missing': { text: `
        job {
        //@ 1-4 error: This job has no name. Put one behind job.
            rules us_dwelling
        }` },
    'wall-missing': { text: `
        job a {
            rules us_dwelling
            control knob on frnt { stands outside }
            //              ^^^^ 💡 error: ‘frnt’ is no wall; the walls are front, left, back and right. Is front meant?
        }`, fixed: 'on front' },
    'name-taken': { text: `
        job a {
            rules us_dwelling
            sign s { says warning }
            sign s { says bathing }
        //@ 10-11 error: The name s is taken; give this sign another.
        }` },
    'block-without-body': { text: `
        job a {
            rules us_dwelling
            sign s
        //@ 5-9 error: sign s has no facts. Put them in braces: sign s { … }.
        }` },
    'property-with-body': { text: `
        job a {
            rules { us_dwelling }
        //@ 5-10 error: rules takes a value, not facts in braces: one or more of…
        }` },
    'use-not-found': { text: `
        use "catalogue/skery.hotroom"
        //  ^^^^^^^^^^^^^^^^^^^^^^^^^ 💡 error: There is no file "catalogue/skery.hotroom". Is "catalogue/skerry.hotroom" meant?
        job a { rules us_dwelling }`, fixed: 'use "catalogue/skerry.hotroom"' },
    'use-outside-workspace': { text: `
        use "../../elsewhere/skerry.hotroom"
        //  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ error: "../../elsewhere/skerry.hotroom" lies outside the folder jobs; a file may use files inside that only. Open a folder that holds both, or copy the file in.
        job a { rules us_dwelling }` },
    'use-not-a-path': { text: `
        use skerry
        //  ^^^^^^ error: A path in quotes stands behind use, such as use "../catalogue/tidewater.hotroom".
        job a { rules us_dwelling }` },
    'name-from-two-files': { others: { 'mine.hotroom': 'catalogue mine {\n    screw bench_screw { length 3" }\n}\n' }, text: `
        use "catalogue/skerry.hotroom"
        use "mine.hotroom"
        //  ^^^^^^^^^^^^^^ error: This file and "catalogue/skerry.hotroom" both give the name bench_screw. Use one of them, or rename one.
        job a { rules us_dwelling }` },
    'value-out-of-range': { text: `
        catalogue c {
            panel_system P { made_to_measure 12" to 6"; modules 24"; engagement 3/8"; corners sides; plate_set_in 0" }
            //                               ^^^^^^^^^ error: This range runs backwards: write the smaller figure first.
        }` },
    'date-impossible': { text: `
        job a {
            rules us_dwelling
            site { width 96"; depth 96"; floor tile; ceiling 7'6"; measured_on 2026-02-29 }
            //                                                                 ^^^^^^^^^^ error: 2026-02-29 is no day of the calendar. A date is year-month-day, such as 2027-03-01.
        }` },
    'file-without-a-job': { text: `
        // to be written
        //@ 1-1 info: This file holds no job and nothing that jobs could use. Write a job, such as job first "My first room" { rules us_dwelling }, or a catalogue.` },
    'nothing-to-override': { text: `
        series cottage {
            rules us_dwelling
            light lamp on left { height 66" }
        }
        job one is cottage {
            light lmp { height 60" }
        //  ^^^^^^^^^ 💡 error: There is no light lmp to say this of. Is lamp meant? A light of its own needs its wall: light lmp on back { … }.
        }`, fixed: 'light lamp { height 60" }' },
    'made-from-itself': { text: `
        series a is b { rules us_dwelling }
        series b is a { rules us_dwelling }
        job one is a
        //         ^ error: a is b is a: made from itself, it has no beginning. Give one of them its own facts.` },
    'argument-missing': { text: `
        series cottage {
            rules us_dwelling
            parameter w { takes length; doc "Outside width" }
            parameter d { takes length; otherwise 72" }
        }
        job one is cottage
        //         ^^^^^^^ error: w (Outside width) is missing. Write cottage(w, d).` },
    'argument-not-expected': { text: `
        series cottage {
            rules us_dwelling
            parameter w { takes length }
        }
        job one is cottage(72", 96")
        //                      ^^^ error: 96" is one value too many: cottage(w) takes 1.
        job two is cottage(w = 72", v = 3")
        //                          ^^^^^^ error: cottage has no parameter v. It is written cottage(w).` },
    'argument-does-not-fit': { text: `
        series cottage {
            rules us_dwelling
            parameter w { takes length; least 60"; most 120" }
            parameter side { takes wall; one_of left, right; otherwise left }
        }
        job one is cottage(400")
        //                 ^^^^ error: w is 400"; at most 120" is allowed.
        job two is cottage(72", front)
        //                      ^^^^^ error: side is front; left or right is wanted.
        job three is cottage(240 V)
        //                   ^^^^^ error: w is 240 V; a length is wanted.` },
    'names-in-a-ring': { text: `
        job one {
            rules us_dwelling
            let a = b + 1"
            //  ^ error: a needs b needs a again: none of them can be worked out first. Give one of them a figure.
            let b = a - 1"
        }` },
    'name-without-value': { text: `
        job one {
            rules us_dwelling
            let free = room.inside.width
            //  ^^^^ error: free needs room.inside.width, which has no value here: the job does not say or give it. Write what it lacks, or a figure of your own.
        }` },
    'waiver-incomplete': { text: `
        job one {
            rules us_dwelling
            waive head-clearance-too-low on upper because "low room"
            //    ^^^^^^^^^^^^^^^^^^^^^^ error: This waiver lacks who decided it (by "…"), until when (until 2027-03-01). Write waive ⟨finding⟩ on ⟨block⟩ because "⟨reason⟩" by "⟨who⟩" until ⟨day⟩.
        }` },
    'waiver-not-allowed': { text: `
        job one {
            rules us_dwelling
            waive clearance-beside-too-small on stove because "tight" by "office" until 2027-03-01
            //    ^^^^^^^^^^^^^^^^^^^^^^^^^^ error: clearance-beside-too-small cannot be waived. “Too little room beside the heater” can never be waived. Mend the job, or ask the heater's maker or the local authority.
            waive unit-missing because "quick" by "office" until 2027-03-01
            //    ^^^^^^^^^^^^ error: unit-missing cannot be waived. It is a mistake of the text: mend it.
        }` },
    'waiver-of-unknown-finding': { text: `
        job one {
            rules us_dwelling
            waive head-clearence-too-low on upper because "low room" by "office" until 2027-03-01
            //    ^^^^^^^^^^^^^^^^^^^^^^ 💡 error: There is no finding head-clearence-too-low. Is head-clearance-too-low meant?
        }`, fixed: 'waive head-clearance-too-low on upper' },
    'waiver-expired': { today: { year: 2027, month: 3, day: 2 }, text: `
        job one {
            rules us_dwelling
            waive head-clearance-too-low on upper because "low room" by "office" until 2027-03-01
            //                                                                         ^^^^^^^^^^ warning: This waiver ran out on 2027-03-01. Look at head-clearance-too-low again: mend it, or have office accept it anew.
            waive rise-too-low on upper because "low room" by "office" until 2027-03-02
        }` },
};
