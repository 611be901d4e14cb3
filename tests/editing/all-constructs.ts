/** A made-up file of sixty lines that uses every construct of the language at least once; formatted, and without a mistake. */
export const allConstructs = `use "catalogue/skerry.hotroom"
use "catalogue/heaters.hotroom"

let margin = 4 1/2"

rule seated_headroom "Head clearance over the top bench" {
    severity  warning
    each      bench
    when      bench.is_highest and room.inside.height > 72"
    require   room.inside.height - bench.top >= 44"
    because   "house standard 7"
}

catalogue extra {
    let less = 1/2 kW
    heater_model Tarn61 "Tarn 61" is Tarn60 { power 5 kW + less }
}

series cottage "Cottage" {
    parameter w { takes length; least 60"; most 120"; otherwise 84"; doc "Outside width" }
    parameter side { takes wall; one_of left, right; otherwise right }
    parameter stove_kind { takes heater_model; otherwise Tarn60 }
    rules     us_dwelling

    let step   = 18"
    let middle = room.inside.width / 2

    site { width 108"; depth 108"; ceiling 7'6"; floor tile; free front, right; supply 240 V single_phase; capacity 60 A; ambient 68 degF }
    room { system Skerry; width w; depth 79 1/2"; height 7'0"; ceiling spans_front_to_back }
    door entry on front { model Leaf24; from left round_down(middle - 12", 1/4"); hinge opposite(side) }
    bench upper on back { build Slatted; top 37"; depth 20" }
    bench lower on back { build Slatted; top step; depth 16"; in_front_of upper }
    heater stove on side { model stove_kind; from front margin; guard yes }
    circuit stove_feed { feeds stove; terminals degC_75 }
    sign wide on front { says bathing; stands outside; when w > 90" or count(bench) > 2 }
    light lamp on left { model Ember; from front 12"; height if room.height > 80" then 72" else 66" }
}

job one "First" is cottage(96", side = right) {
    number    "1"
    waive seated_headroom on upper because "low room, signed" by "design office" until 2027-03-01
    bench upper { top max(38", lower.top + 18") }

    variant low "Low benches" {
        let rise = min(16", 18" - 2")
        bench upper { top rise + 18" }
        bench lower { top rise; depth upper.depth - 4" }
    }
}

job two "Second" is cottage(w = 84", stove_kind = Tarn61) {
    room { height 86" }
    bench lower { top upper.ledger.top - 16 3/4" }
}

job three "Third" is cottage
`;
