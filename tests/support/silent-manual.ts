/** A heater whose manual says nothing but what it must: a snippet for rules that ask what holds then. It stands at the beginning of a line of a snippet. */
export const silentManual = `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }`.trimStart();
