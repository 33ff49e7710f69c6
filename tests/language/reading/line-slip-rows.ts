/**
 * How a hurried hand writes lines outside the sets: one line in an entry of its kind, and below it what is said of it
 * and what each fix makes of it.
 */
export const LINE_SLIP_ROWS = `
session: session Mon 2026-11-24 Mara Zog
  Write session 2026-11-24 Mara Zog: a date needs no day of the week [spelling-of-word]
  → session 2026-11-24 Mara Zog
session: session 24 Nov 2026 Mara Zog at Kelp Cellar
  Write session 2026-11-24 Mara Zog at Kelp Cellar: a date is year-month-day [spelling-of-word]
  → session 2026-11-24 Mara Zog at Kelp Cellar
session: session Nov 24, 2026 Mara Zog
  Write session 2026-11-24 Mara Zog: a date is year-month-day [spelling-of-word]
  → session 2026-11-24 Mara Zog
session: session 24th November 2026
  Write session 2026-11-24: a date is year-month-day [spelling-of-word]
  → session 2026-11-24
session: session 2026–11–24 Mara Zog
  Write session 2026-11-24 Mara Zog: a date has plain dashes [spelling-of-word]
  → session 2026-11-24 Mara Zog
session: session 24 Nov Mara Zog
  24 Nov is not a whole date: write year-month-day, such as 2026-11-17 [odd-date]
session: session today Mara Zog
  Write the date itself, such as session 2026-11-17: another day, nobody knows which day this was [odd-date]
session: session 2026-11-24 7am Mara Zog
  Write session 2026-11-24 07:00 Mara Zog: a time of day is written such as 07:10 or 18:30 [spelling-of-word]
  → session 2026-11-24 07:00 Mara Zog
session: session 2026-11-24 7.30 pm Mara Zog
  Write session 2026-11-24 19:30 Mara Zog: a time of day is written such as 07:10 or 18:30 [spelling-of-word]
  → session 2026-11-24 19:30 Mara Zog
session: session 2026-11-24 18h30
  Write session 2026-11-24 18:30: a time of day is written such as 07:10 or 18:30 [spelling-of-word]
  → session 2026-11-24 18:30
session: session 2026-11-24 at 18:30 Mara Zog, Kelp Ladder week 2 day 1
  Write session 2026-11-24 18:30 Mara Zog, Kelp Ladder week 2 day 1: a time of day is written such as 07:10 or 18:30 [spelling-of-word]
  → session 2026-11-24 18:30 Mara Zog, Kelp Ladder week 2 day 1
session: session 2026-11-24, Mara Zog at Kelp Cellar
  Write session 2026-11-24 Mara Zog at Kelp Cellar: nothing stands between the date and the athlete [spelling-of-word]
  → session 2026-11-24 Mara Zog at Kelp Cellar
session: session 2026-11-24 - Mara Zog
  Write session 2026-11-24 Mara Zog: nothing stands between the date and the athlete [spelling-of-word]
  → session 2026-11-24 Mara Zog
session: session 2026-11-24 Mara Zog @ Kelp Cellar
  Write session 2026-11-24 Mara Zog at Kelp Cellar: the word at stands before the place [spelling-of-word]
  → session 2026-11-24 Mara Zog at Kelp Cellar
session: session Tue 24 Nov 2026 Mara Zog @ Kelp Cellar
  Write session 2026-11-24 Mara Zog at Kelp Cellar: a date is year-month-day [spelling-of-word]
  → session 2026-11-24 Mara Zog at Kelp Cellar
session: session 2026-11-24 Mara Zog & Tibor Ull at Salt & Kelp Cellar
  Write session 2026-11-24 Mara Zog | Tibor Ull at Salt & Kelp Cellar: a bar stands between the athletes of a group [spelling-of-word]
  → session 2026-11-24 Mara Zog | Tibor Ull at Salt & Kelp Cellar
session: session 2026-11-24 Mara Zog and Tibor Ull
  Write session 2026-11-24 Mara Zog | Tibor Ull: a bar stands between the athletes of a group [spelling-of-word]
  → session 2026-11-24 Mara Zog | Tibor Ull
session: session 2026-11-24 Mara Zog:
  Write session 2026-11-24 Mara Zog: no colon stands behind a header [spelling-of-word]
  → session 2026-11-24 Mara Zog
plan: plan “Kelp Ladder”
  Write plan Kelp Ladder: a name stands without quotation marks [spelling-of-word]
  → plan Kelp Ladder
units: units metric
  Write units kg: the unit itself is written, kg or lb [syntax]
  → units kg
units: units imperial
  Write units lb: the unit itself is written, kg or lb [syntax]
  → units lb
session: note: felt tired today
  Write > felt tired today: a note begins with > [spelling-of-word]
  → > felt tired today
session: Notes - the sandbag leaks
  Write > the sandbag leaks: a note begins with > [spelling-of-word]
  → > the sandbag leaks
athlete: notes: likes carrots
  Write > likes carrots: a note begins with > [spelling-of-word]
  → > likes carrots
session: A1: Row: 3x8 @ 40 kg
  Write A1 Row: 3x8 @ 40 kg: the colon stands behind the name, not behind A1 [spelling-of-word]
  → A1 Row: 3x8 @ 40 kg
session: A1: Row 3x8
  Write A1 Row: 3x8: the colon stands behind the name, not behind A1 [spelling-of-word]
  → A1 Row: 3x8
session: - Row: 5 @ 60 kg
  Write Row: 5 @ 60 kg: nothing stands before the name [spelling-of-word]
  → Row: 5 @ 60 kg
session: 1. Row: 5 @ 60 kg
  Write Row: 5 @ 60 kg: nothing stands before the name [spelling-of-word]
  → Row: 5 @ 60 kg
session: effort 8/10
  Write effort 8: effort is a number from 0 to 10 [spelling-of-word]
  → effort 8
session: effort: 8 out of 10
  Write effort 8: effort is a number from 0 to 10 [spelling-of-word]
  → effort 8
session: session RPE 8
  Write effort 8: how hard a whole session was is its effort [spelling-of-word]
  → effort 8
session: sRPE 7
  Write effort 7: how hard a whole session was is its effort [spelling-of-word]
  → effort 7
session: effort 7-8
  Write effort 7 or effort 8: effort is one number from 0 to 10 [syntax]
  → effort 7
  → effort 8
session: RPE 8
  Write effort 8: that is the whole session's; a set's rating stands behind its load, such as 5 @ 60 kg rpe 8 [stray-line]
  → effort 8
session: rir 2
  rir stands behind the set that it belongs to, on the same line, such as 5 @ 60 kg rir 2 or 5:00 hr 132 [stray-line]
session: HR 132
  HR stands behind the set that it belongs to, on the same line, such as 5 @ 60 kg rir 2 or 5:00 hr 132 [stray-line]
session: tempo 3-1-X-1
  tempo stands behind the sets of its movement, such as 3x5 @ 60 kg, tempo 3-1-X-1 [stray-line]
session: readiness 3/5
  Write readiness 3: readiness is a number from 1 to 5 [spelling-of-word]
  → readiness 3
session: readiness 7/10
  Readiness goes from 1 to 5: write which of these it is [out-of-range]
session: pain 3/10 left knee
  Write pain 3 left knee: pain is a number from 0 to 10, then where [spelling-of-word]
  → pain 3 left knee
session: pain left knee 3
  Write pain 3 left knee: the number from 0 to 10 comes before the place [spelling-of-word]
  → pain 3 left knee
session: no pain
  Write pain 0: pain is a number from 0 to 10 [spelling-of-word]
  → pain 0
session: lasted about 45 min
  Write lasted 45 min: a number is not said to be near [spelling-of-word]
  → lasted 45 min
session: lasted 45'
  Write lasted 45 min: minutes are written min [spelling-of-word]
  → lasted 45 min
session: duration 45
  Write lasted 45 min: how long a session took is told by lasted, with its unit [stray-line]
  → lasted 45 min
session: duration 45 min
  Write lasted 45 min: how long a session took is told by lasted [spelling-of-word]
  → lasted 45 min
session: took ~50 min
  Write lasted 50 min: a number is not said to be near [spelling-of-word]
  → lasted 50 min
session: lasted 1h10
  Write lasted 70 min: hours and minutes, or minutes and seconds, stand on both sides of a colon [spelling-of-word]
  → lasted 70 min
session: lasted 1 hr 10 min
  Write lasted 70 min: hours and minutes, or minutes and seconds, stand on both sides of a colon [spelling-of-word]
  → lasted 70 min
session: sleep 7h30
  Write sleep 7:30: hours and minutes, or minutes and seconds, stand on both sides of a colon [spelling-of-word]
  → sleep 7:30
session: sleep 7,5
  Write sleep 7.5 h: hours are written with a point and h [spelling-of-word]
  → sleep 7.5 h
session: sleep 7-8 h
  Write sleep 7 h or sleep 8 h: sleep is one number of hours [syntax]
  → sleep 7 h
  → sleep 8 h
session: slept 7 h
  Write sleep 7 h: the night before is told by sleep [spelling-of-word]
  → sleep 7 h
session: weight 80 kg
  Write bodyweight 80 kg: a weigh-in is told by bodyweight; a load stands behind the sets, such as 5 @ 60 kg [stray-line]
  → bodyweight 80 kg
session: BW: 80kg
  Write bodyweight 80kg: a weigh-in is told by bodyweight [spelling-of-word]
  → bodyweight 80kg
session: weighed 80,5 kg
  Write bodyweight 80.5 kg: a weigh-in is told by bodyweight [spelling-of-word]
  → bodyweight 80.5 kg
session: effort 8 - legs felt heavy
  Write effort 8: a remark is a note on a line of its own [spelling-of-word]
  → effort 8 ⏎ > legs felt heavy
session: lasted 52 min (late start)
  Write lasted 52 min: a remark is a note on a line of its own [spelling-of-word]
  → lasted 52 min ⏎ > late start
session: sleep well
  Write > sleep well: sleep is a number, and words are a note [syntax]
  → > sleep well
session: missed - ferry
  Write missed, ferry: a comma stands before the reason [spelling-of-word]
  → missed, ferry
session: missed because of rain
  Write missed, rain: a comma stands before the reason [spelling-of-word]
  → missed, rain
session: cancelled (rain)
  Write missed, rain: a planned day that did not happen is told by missed [stray-line]
  → missed, rain
session: Warm up
  Write warmup: one word [spelling-of-word]
  → warmup
session: A super set, 3 rounds
  Write A superset, 3 rounds: one word [spelling-of-word]
  → A superset, 3 rounds
session: Superset A
  Write A superset: the letter comes before the kind of block [spelling-of-word]
  → A superset
session: A: circuit, 3 rounds
  Write A circuit, 3 rounds: no colon stands behind the letter of a block [spelling-of-word]
  → A circuit, 3 rounds
session: A circuit x3
  Write A circuit, 3 rounds: a list is done in rounds [spelling-of-word]
  → A circuit, 3 rounds
session: A circuit, 3 sets
  Write A circuit, 3 rounds: a list is done in rounds [spelling-of-word]
  → A circuit, 3 rounds
session: A circuit, 3 rounds rest 1:15
  Write A circuit, 3 rounds, rest 1:15: a comma stands before each setting [spelling-of-word]
  → A circuit, 3 rounds, rest 1:15
session: A circuit, 3 rounds, 1:15 rest
  Write A circuit, 3 rounds, rest 1:15: the word comes before its time [spelling-of-word]
  → A circuit, 3 rounds, rest 1:15
session: A circuit, 3 rounds, 2 passes
  Write A circuit, 3 rounds x 2 passes: an x stands between rounds and passes [spelling-of-word]
  → A circuit, 3 rounds x 2 passes
session: A circuit, three rounds
  Write A circuit, 3 rounds: a number stands in digits [spelling-of-word]
  → A circuit, 3 rounds
session: EMOM 12
  Write every 1:00 for 12:00: work at each full minute [spelling-of-word]
  → every 1:00 for 12:00
session: every minute for 12 min
  Write every 1:00 for 12:00: work at each full minute [spelling-of-word]
  → every 1:00 for 12:00
session: every 90s x 8
  Write every 1:30 for 12:00: the whole time stands behind for [spelling-of-word]
  → every 1:30 for 12:00
session: AMRAP in 12 min
  Write amrap 12:00: the time stands behind the word [spelling-of-word]
  → amrap 12:00
session: amrap 12
  Write amrap 12:00: a time has its unit [missing-unit]
  → amrap 12:00
session: intervals 20s/10s x 8
  Write intervals 0:20 on, 0:10 off, 8 rounds: work and rest stand apart [spelling-of-word]
  → intervals 0:20 on, 0:10 off, 8 rounds
session: intervals 8 x 20s on 10s off
  Write intervals 0:20 on, 0:10 off, 8 rounds: work and rest stand apart [spelling-of-word]
  → intervals 0:20 on, 0:10 off, 8 rounds
session: tabata
  Write intervals 0:20 on, 0:10 off, 8 rounds: the times and rounds are written [stray-line]
  → intervals 0:20 on, 0:10 off, 8 rounds
session: 3 rounds of
  Write circuit, 3 rounds or superset, 3 rounds or for time, 3 rounds: a block says how it is done [stray-line]
  → circuit, 3 rounds
  → superset, 3 rounds
  → for time, 3 rounds
session: warmup: 10 min row
  Write warmup: what was done stands on lines of its own, as a movement or as a note [spelling-of-word]
  → warmup ⏎ > 10 min row
session: Finisher:
  Write straight or # Finisher: a block says how it is done, and a heading of your own is a comment [stray-line]
  → straight
  → # Finisher
session: done 2
  Write done 2 rounds: done says of what [spelling-of-word]
  → done 2 rounds
session: done 1+7
  Write done 1 round + 7: done says of what [spelling-of-word]
  → done 1 round + 7
session: done 67 reps
  Write whole rounds, and what was done of the next behind a plus, such as done 4 rounds + 7 [missing-value]
session: done 11:20
  Write done in 11:20: the word in stands before a time [spelling-of-word]
  → done in 11:20
session: done 2/3 rounds
  Write done 2 of 3 rounds: done says how many of how many [spelling-of-word]
  → done 2 of 3 rounds
session: done 2 of 3
  Write done 2 of 3 rounds: done says how many of how many [spelling-of-word]
  → done 2 of 3 rounds
session: time 2:20 2:31 2:40
  Write time 2:20, 2:31, 2:40: a comma stands between the rounds [spelling-of-word]
  → time 2:20, 2:31, 2:40
session: time 2m20, 2m31, 2m40
  Write time 2:20, 2:31, 2:40: hours and minutes, or minutes and seconds, stand on both sides of a colon [spelling-of-word]
  → time 2:20, 2:31, 2:40
session: time 2'20", 2'31", 2'40"
  Write time 2:20, 2:31, 2:40: minutes and seconds stand on both sides of a colon [spelling-of-word]
  → time 2:20, 2:31, 2:40
session: time 2.20, 2.31, 2.40
  Write time 2:20, 2:31, 2:40: minutes and seconds stand on both sides of a colon [unclear-time]
  → time 2:20, 2:31, 2:40
session: rest 2-3 min
  Write rest 2 min or rest 3 min: a rest that was taken is one time [for-plans]
  → rest 2 min
  → rest 3 min
session: rest 2min30
  Write rest 2:30: hours and minutes, or minutes and seconds, stand on both sides of a colon [spelling-of-word]
  → rest 2:30
session: Row: 5,5,5 @ 50,55,60 kg
  Write Row: 5 @ 50 kg, 5 @ 55 kg, 5 @ 60 kg: each set writes its own load [spelling-of-word]
  → Row: 5 @ 50 kg, 5 @ 55 kg, 5 @ 60 kg
session: Row: 3x5 @ 50/55/60 kg
  Write Row: 5 @ 50 kg, 5 @ 55 kg, 5 @ 60 kg: each set writes its own load [spelling-of-word]
  → Row: 5 @ 50 kg, 5 @ 55 kg, 5 @ 60 kg
session: Row: 3x5 50/55/60 kg
  Write Row: 5 @ 50 kg, 5 @ 55 kg, 5 @ 60 kg: each set writes its own load [spelling-of-word]
  → Row: 5 @ 50 kg, 5 @ 55 kg, 5 @ 60 kg
session: Row: 3x5 @ 2 RIR
  Write Row: 3x5 rir 2: the word comes before its number, and @ before a load [spelling-of-word]
  → Row: 3x5 rir 2
session: Row: 3x5 @ 60 kg rpe 7/8/9
  Write Row: 5 @ 60 kg rpe 7, 5 @ 60 kg rpe 8, 5 @ 60 kg rpe 9: each set writes its own rating [spelling-of-word]
  → Row: 5 @ 60 kg rpe 7, 5 @ 60 kg rpe 8, 5 @ 60 kg rpe 9
session: Row: 60x5, 65x5, 70x5 kg
  Write Row: 5 @ 60, 5 @ 65, 5 @ 70 kg: reps come before the load [spelling-of-word]
  → Row: 5 @ 60, 5 @ 65, 5 @ 70 kg
session: Plank: 3 @ 18s
  Write Plank: 3x18 s or Plank: 3 @ 2x18 kg: s is a time, and a load stands behind @ [syntax]
  → Plank: 3x18 s
  → Plank: 3 @ 2x18 kg
session: Row: 3x8 @ 20s
  Write Row: 3x8 @ 2x20 kg or Row: 3x8 @ 2x20 lb: s is a time, and a load stands behind @ [syntax]
  → Row: 3x8 @ 2x20 kg
  → Row: 3x8 @ 2x20 lb
session: Plank: 1min30s
  Write Plank: 1:30: hours and minutes, or minutes and seconds, stand on both sides of a colon [spelling-of-word]
  → Plank: 1:30
plan: Row: 3x5 @ 8 RPE
  Write Row: 3x5 @ rpe 8: the word comes before its number [spelling-of-word]
  → Row: 3x5 @ rpe 8
plan: Row: 3x5 @ 70%, 75%, 80%
  Write Row: 5 @ 70%, 5 @ 75%, 5 @ 80% or Row: 3x5 @ 70% | 3x5 @ 75% | 3x5 @ 80%: a comma stands between sets with their own loads, a bar between weeks [sets-spelled-apart]
  → Row: 5 @ 70%, 5 @ 75%, 5 @ 80%
  → Row: 3x5 @ 70% | 3x5 @ 75% | 3x5 @ 80%
plan: Row: 3x5 @ 70%, 75%, 80%, 85%
  Write Row: 3x5 @ 70% | 3x5 @ 75% | 3x5 @ 80% | 3x5 @ 85%: a bar stands between the weeks [sets-spelled-apart]
  → Row: 3x5 @ 70% | 3x5 @ 75% | 3x5 @ 80% | 3x5 @ 85%
plan: Row: 3x5 @ 60 kg, rest 2-3 min
  Write Row: 3x5 @ 60 kg, rest 2 min-3 min: both ends of a rest have their unit [spelling-of-word]
  → Row: 3x5 @ 60 kg, rest 2 min-3 min
plan: days Mon Thu
  Write days Mon, Thu: a comma stands between the days [spelling-of-word]
  → days Mon, Thu
plan: days Mon/Wed and Fri
  Write days Mon, Wed, Fri: a comma stands between the days [spelling-of-word]
  → days Mon, Wed, Fri
plan: days 3 a week
  Write days alternate, 3 a week: weekdays such as Mon, Thu, or the days of the plan in turn [syntax]
  → days alternate, 3 a week
plan: 4 weeks
  Write weeks 4: the word comes first [spelling-of-word]
  → weeks 4
plan: starts 2 Nov 2026
  Write starts 2026-11-02: a date is year-month-day [spelling-of-word]
  → starts 2026-11-02
plan: starts on 2026-11-02
  Write starts 2026-11-02: the date alone stands behind the word [spelling-of-word]
  → starts 2026-11-02
plan: starts 2nd November
  2nd November is not a whole date: write year-month-day, such as 2026-11-17 [odd-date]
plan: deload 4
  Write the week, and what is left of its sets and loads, such as deload week 4, sets 50%, load 90% [missing-value]
plan: deload week 4 50%
  Write deload week 4, sets 50% or deload week 4, load 50%: a share is of the sets or of the load [syntax]
  → deload week 4, sets 50%
  → deload week 4, load 50%
plan: deload week 4: sets 60% load 85%
  Write deload week 4, sets 60%, load 85%: a comma stands before each share [spelling-of-word]
  → deload week 4, sets 60%, load 85%
plan: deload weeks 4, 8
  Each lighter week has a line of its own, such as deload week 4, sets 60% [syntax]
plan: deload every 4 weeks
  A lighter week is named by its number, such as deload week 4, sets 60%, a line for each [syntax]
plan: TM 90
  Write training max 90%: a share of the max, in percent [spelling-of-word]
  → training max 90%
plan: athlete Mara Zog
  Write for Mara Zog: whom a plan is for is told by for [spelling-of-word]
  → for Mara Zog
plan: location Kelp Cellar
  Write at Kelp Cellar: where a plan is done is told by at [spelling-of-word]
  → at Kelp Cellar
plan: for Mara Zog & Tibor Ull
  Write for Mara Zog, Tibor Ull: a comma stands between the athletes [spelling-of-word]
  → for Mara Zog, Tibor Ull
plan: Week 1:
  Weeks stand on the line of each movement, between bars: Back Squat: 3x5 @ 70% | 3x5 @ 75%; the number of them is told by weeks 4 [stray-line]
plan: Workout 2: Pull
  Write day 2 Pull: a day of a plan begins with day and its number [stray-line]
  → day 2 Pull
plan: Day B
  Write day 2: days have numbers [missing-value]
  → day 2
plan: Monday
  A day begins with day 1; on which weekdays the days are is told by a line such as days Mon, Thu [stray-line]
place: dumbbells 4,6,8 kg
  Write dumbbells 4-8 by 2 kg: a step goes from the first to the last [spelling-of-word]
  → dumbbells 4-8 by 2 kg
place: dumbbells 4 to 32 kg in steps of 2 kg
  Write dumbbells 4-32 by 2 kg: a range and its step [spelling-of-word]
  → dumbbells 4-32 by 2 kg
place: kettlebells 12 16 20 kg
  Write kettlebells 12, 16, 20 kg: a step goes from the first to the last [spelling-of-word]
  → kettlebells 12, 16, 20 kg
place: kettlebells 12-24 by 4 kg
  Write kettlebells 12, 16, 20, 24 kg: kettlebells stand one by one [spelling-of-word]
  → kettlebells 12, 16, 20, 24 kg
place: plates 4x20kg 2x10kg
  Write plates 4x20kg, 2x10kg: a comma stands between the weights [spelling-of-word]
  → plates 4x20kg, 2x10kg
place: plates 20 kg x 4, 10 kg x 2
  Write plates 4x20 kg, 2x10 kg: the number of plates comes first [spelling-of-word]
  → plates 4x20 kg, 2x10 kg
place: plates 2x20, 2x1,25 kg
  Write plates 2x20, 2x1.25 kg: a point stands in a number, and a comma between weights [spelling-of-word]
  → plates 2x20, 2x1.25 kg
place: barbell 20 kg
  Write bars 20 kg: empty bars are told by bars [spelling-of-word]
  → bars 20 kg
place: cable 5-100 by 5 kg
  Write stacks cable 5-100 by 5 kg: what a machine can be set to is told by stacks [spelling-of-word]
  → stacks cable 5-100 by 5 kg
place: equipment: rack, bench
  Write has rack, bench: other equipment is told by has [spelling-of-word]
  → has rack, bench
place: collars 2 x 2.5 kg
  Write collars 5 kg: both collars together [spelling-of-word]
  → collars 5 kg
place: has rack; bench
  Write has rack, bench: a comma stands between them [spelling-of-word]
  → has rack, bench
place: has rack and bench
  Write has rack, bench: a comma stands between them [spelling-of-word]
  → has rack, bench
exercise: muscles quads / glutes
  Write muscles quads, glutes: a comma stands between them [spelling-of-word]
  → muscles quads, glutes
exercise: muscles glutes, hamstrings (half)
  Write muscles glutes, hamstrings 1/2: a share is a fraction [spelling-of-word]
  → muscles glutes, hamstrings 1/2
exercise: bodyweight 0.65
  Write bodyweight 65%: a share of body mass, in percent [spelling-of-word]
  → bodyweight 65%
exercise: each rep moves 1
  Write each rep moves one: in words [spelling-of-word]
  → each rep moves one
exercise: aka Keel Shimmy
  Write also Keel Shimmy: other spellings are told by also [spelling-of-word]
  → also Keel Shimmy
exercise: equipment: sandbag
  Write needs sandbag: equipment is told by needs [spelling-of-word]
  → needs sandbag
exercise: regression Goblet Squat
  Write easier Goblet Squat: a movement to go back to is told by easier [spelling-of-word]
  → easier Goblet Squat
exercise: progression Back Squat
  Write harder Back Squat: a movement to go on to is told by harder [spelling-of-word]
  → harder Back Squat
exercise: trunk anti-rotation
  Write trunk resists rotation: what the trunk resists is said by its word [spelling-of-word]
  → trunk resists rotation
exercise: trunk resists rotation and extension
  Write trunk resists rotation, extension: a comma stands between them [spelling-of-word]
  → trunk resists rotation, extension
athlete: born 12 Mar 1991
  Write born 1991: the year is enough [spelling-of-word]
  → born 1991
athlete: born '91
  Write born 1991 or born 2091: all four digits of the year [out-of-range]
  → born 1991
  → born 2091
athlete: sex f
  Write sex female: female or male [spelling-of-word]
  → sex female
athlete: weight 80 kg on 2026-10-01
  Write bodyweight 80 kg on 2026-10-01: a weigh-in and its day [spelling-of-word]
  → bodyweight 80 kg on 2026-10-01
athlete: bodyweight 2026-10-01: 80 kg
  Write bodyweight 80 kg on 2026-10-01: a weigh-in and its day [spelling-of-word]
  → bodyweight 80 kg on 2026-10-01
athlete: max Back Squat 105 kg on 2026-09-28
  Write max Back Squat: 105 kg on 2026-09-28: a colon behind the movement, then load and day [spelling-of-word]
  → max Back Squat: 105 kg on 2026-09-28
athlete: 1RM Back Squat: 105 kg (2026-09-28)
  Write max Back Squat: 105 kg on 2026-09-28: a colon behind the movement, then load and day [spelling-of-word]
  → max Back Squat: 105 kg on 2026-09-28
athlete: max Pull-up: +20 kg on 2026-09-28
  Write max Pull-up: bw+20 kg on 2026-09-28: weight added to the body begins with bw [spelling-of-word]
  → max Pull-up: bw+20 kg on 2026-09-28
athlete: goal Back Squat 120 kg by 2027-06-01
  Write goal Back Squat: 1 @ 120 kg by 2027-06-01: reps stand before the load [spelling-of-word]
  → goal Back Squat: 1 @ 120 kg by 2027-06-01
athlete: avoid vertical push (shoulder)
  Write avoid vertical push, shoulder: a comma stands before the reason [spelling-of-word]
  → avoid vertical push, shoulder
athlete: avoid vertical push till 2026-12-15, shoulder
  Write avoid vertical push until 2026-12-15, shoulder: the last day stands behind until [spelling-of-word]
  → avoid vertical push until 2026-12-15, shoulder
athlete: avoid vertical push until 15 Dec 2026
  Write avoid vertical push until 2026-12-15: a date is year-month-day [spelling-of-word]
  → avoid vertical push until 2026-12-15
athlete: away 2026-12-19 - 2027-01-03
  Write away 2026-12-19 to 2027-01-03: the word to stands between two days [spelling-of-word]
  → away 2026-12-19 to 2027-01-03
athlete: away 19-26 Dec 2026
  Write away 2026-12-19 to 2026-12-26: both days are written in full [spelling-of-word]
  → away 2026-12-19 to 2026-12-26
athlete: screened on 2026-11-17
  Write screened 2026-11-17: the date alone stands behind the word [spelling-of-word]
  → screened 2026-11-17
session: session 2026-11-24: Mara Zog
  Write session 2026-11-24 Mara Zog: nothing stands between the date and the athlete [spelling-of-word]
  → session 2026-11-24 Mara Zog
session: session 2026-11-24 12:30 pm Mara Zog
  Write session 2026-11-24 12:30 Mara Zog: a time of day is written such as 07:10 or 18:30 [spelling-of-word]
  → session 2026-11-24 12:30 Mara Zog
session: Row: 2x8 @ 45 lb, 20 kg
  Write Row: 8 @ 45 lb, 8 @ 20 kg: each set writes its own load [spelling-of-word]
  → Row: 8 @ 45 lb, 8 @ 20 kg
session: Row: 2x3 @ 61,25 kg
  Write Row: 2x3 @ 61.25 kg or Row: 3 @ 61 kg, 3 @ 25 kg: a comma may stand in a number or between the loads of two sets [decimal-comma]
  → Row: 2x3 @ 61.25 kg
  → Row: 3 @ 61 kg, 3 @ 25 kg
session: Row: 2x8 @ 20/22 kg
  Write Row: 8 @ 20 kg, 8 @ 22 kg or Row: 2x8 @ 20&22 kg: the two sets may have a load each, or the two hands or sides [sets-spelled-apart]
  → Row: 8 @ 20 kg, 8 @ 22 kg
  → Row: 2x8 @ 20&22 kg
session: Row: 2x8/side @ 20/22 kg
  Write Row: 8/side @ 20 kg, 8/side @ 22 kg or Row: 2x8/side @ 20 kg left 22 kg right: the two sets may have a load each, or the two hands or sides [sets-spelled-apart]
  → Row: 8/side @ 20 kg, 8/side @ 22 kg
  → Row: 2x8/side @ 20 kg left 22 kg right
session: Row: 2x5 @ 60 kg rpe 8/10
  Write Row: 5 @ 60 kg rpe 8, 5 @ 60 kg rpe 10 or Row: 2x5 @ 60 kg rpe 8: the two sets may have a rating each, or both the same [rating-list]
  → Row: 5 @ 60 kg rpe 8, 5 @ 60 kg rpe 10
  → Row: 2x5 @ 60 kg rpe 8
session: Row: 2x5 @ 60 kg rpe 8/9
  Write Row: 5 @ 60 kg rpe 8, 5 @ 60 kg rpe 9 or Row: 2x5 @ 60 kg rpe 8.5: the two sets may have a rating each, or both the same [rating-list]
  → Row: 5 @ 60 kg rpe 8, 5 @ 60 kg rpe 9
  → Row: 2x5 @ 60 kg rpe 8.5
session: Row: 2x5 @ 60 kg rpe 7/9
  Write Row: 5 @ 60 kg rpe 7, 5 @ 60 kg rpe 9: each set writes its own rating [spelling-of-word]
  → Row: 5 @ 60 kg rpe 7, 5 @ 60 kg rpe 9
session: effort: RPE 8
  Write effort 8: how hard a whole session was is its effort [spelling-of-word]
  → effort 8
session: pain 2/5 knee
  Pain goes from 0 to 10: write which of these it is, then where [out-of-range]
session: pain 3 out of 7
  Pain goes from 0 to 10: write which of these it is, then where [out-of-range]
session: sleep 7,30
  Write sleep 7:30 or sleep 7.30 h: hours and minutes have a colon, and a part of an hour a point [unclear-time]
  → sleep 7:30
  → sleep 7.30 h
session: missed the last rep
  Write > missed the last rep: missed alone means that the whole session did not happen; of a set write 4 of 5 [spelling-of-word]
  → > missed the last rep
session: missed lunch
  Write missed, lunch or > missed lunch: a comma stands before the reason why a whole session did not happen [syntax]
  → missed, lunch
  → > missed lunch
plan: tm: 90
  Write training max 90%: a share of the max, in percent [spelling-of-word]
  → training max 90%
place: plates 4x20, 2x7,5, 2x1,25 kg
  Write plates 4x20, 2x7.5, 2x1.25 kg: a point stands in a number, and a comma between weights [spelling-of-word]
  → plates 4x20, 2x7.5, 2x1.25 kg
place: plates 2x2,5 kg
  Write plates 2x2.5 kg or plates 2x2, 5 kg: a comma may stand in a number or between two weights [decimal-comma]
  → plates 2x2.5 kg
  → plates 2x2, 5 kg
athlete: goal Pull-up +10 kg
  Write goal Pull-up: 1 @ bw+10 kg: reps stand before the load [spelling-of-word]
  → goal Pull-up: 1 @ bw+10 kg
athlete: max Pull-up +20 kg on 2026-10-02
  Write max Pull-up: bw+20 kg on 2026-10-02: weight added to the body begins with bw [spelling-of-word]
  → max Pull-up: bw+20 kg on 2026-10-02
athlete: retest Squat: 80,5 kg, 81 kg on 2026-02-01
  Write retest Squat: 80.5 kg, 81 kg on 2026-02-01: a point stands in a number, and a comma between weights [spelling-of-word]
  → retest Squat: 80.5 kg, 81 kg on 2026-02-01
session: Rower: 2,000 m
  Write Rower: 2000 m: a comma begins something new [spelling-of-word]
  → Rower: 2000 m
session: Rower: 500, 450, 400 m
  Write Rower: 500 m, 450 m, 400 m: a number without a unit counts reps [missing-unit]
  → Rower: 500 m, 450 m, 400 m
session: Run: 2x5,2 km
  Write Run: 2x5.2 km or Run: 2x5 km, 2x2 km: a comma may stand in a number or between two distances [decimal-comma]
  → Run: 2x5.2 km
  → Run: 2x5 km, 2x2 km
session: Rower: 1.000 m
  Write Rower: 1000 m or Rower: 1 m: a point may stand before decimals or between thousands [decimal-comma]
  → Rower: 1000 m
  → Rower: 1 m
session: Rower: 500 m, 2x1.500 m @ 10 kg
  Write Rower: 500 m, 2x1500 m @ 10 kg or Rower: 500 m, 2x1.5 m @ 10 kg: a point may stand before decimals or between thousands [decimal-comma]
  → Rower: 500 m, 2x1500 m @ 10 kg
  → Rower: 500 m, 2x1.5 m @ 10 kg
session: time 140, 151, ?
  Write time 140 s, 151 s, ? or time 1:40, 1:51, ?: these may be seconds, or minutes and seconds without their colon [missing-unit]
  → time 140 s, 151 s, ?
  → time 1:40, 1:51, ?
session: time 52, 58, 61
  Write time 52 s, 58 s, 61 s: each time has its unit or its colon [missing-unit]
  → time 52 s, 58 s, 61 s
session: sleep 23:00
  23:00 is a time of day: sleep says how long, such as 7:30 [unclear-time]
plan: Bench Press: 5,3,1 @ 75,85,95%
  Write Bench Press: 5 @ 75%, 3 @ 85%, 1 @ 95%: each set writes its own load [spelling-of-word]
  → Bench Press: 5 @ 75%, 3 @ 85%, 1 @ 95%
session: - session 2026-11-24 Mara Zog at Kelp Cellar
  Write session 2026-11-24 Mara Zog at Kelp Cellar: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 Mara Zog at Kelp Cellar
session: **session 2026-11-24 Mara Zog**
  Write session 2026-11-24 Mara Zog: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 Mara Zog
session: session2026-11-24 18:30 Mara Zog
  Write session 2026-11-24 18:30 Mara Zog: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 18:30 Mara Zog
session: 2026-11-24 Mara Zog
  Write session 2026-11-24 Mara Zog: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 Mara Zog
session: Tue 24.11.2026 Mara Zog
  Write session 2026-11-24 Mara Zog: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 Mara Zog
session: 24 Nov 2026 Mara Zog
  Write session 2026-11-24 Mara Zog: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 Mara Zog
session: 5/11/2026 Mara Zog
  Write session 2026-11-05 Mara Zog or session 2026-05-11 Mara Zog: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-05 Mara Zog
  → session 2026-05-11 Mara Zog
session: training 2026-11-24 Mara Zog, Kelp Ladder week 2 day 1
  Write session 2026-11-24 Mara Zog, Kelp Ladder week 2 day 1: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 Mara Zog, Kelp Ladder week 2 day 1
session: session Mara Zog 2026-11-24 18:30 at Kelp Cellar
  Write session 2026-11-24 18:30 Mara Zog at Kelp Cellar: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 18:30 Mara Zog at Kelp Cellar
plan: training 2026-11-24 Mara Zog
  Write session 2026-11-24 Mara Zog: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-24 Mara Zog
plan: session 5.11.2026
  Write session 2026-11-05 or session 2026-05-11: no session begins here, so the lines below count to the entry above until it is corrected [stray-line]
  → session 2026-11-05
  → session 2026-05-11
unknown: session 2026-11-24 Mara Zog
  Write session 2026-11-24 Mara Zog: no session begins here, so the lines below count nowhere until it is corrected [stray-line]
  → session 2026-11-24 Mara Zog
unknown: 5.11.2026 Mara Zog
  Write session 2026-11-05 Mara Zog or session 2026-05-11 Mara Zog: no session begins here, so the lines below count nowhere until it is corrected [stray-line]
  → session 2026-11-05 Mara Zog
  → session 2026-05-11 Mara Zog
session: session 2026-11-24 Mara Zog 18:30
  Write session 2026-11-24 18:30 Mara Zog: a time of day stands behind the date [spelling-of-word]
  → session 2026-11-24 18:30 Mara Zog
session: session 2026-11-24 Mara Zog at Kelp Cellar 7.30 pm
  Write session 2026-11-24 19:30 Mara Zog at Kelp Cellar: a time of day stands behind the date [spelling-of-word]
  → session 2026-11-24 19:30 Mara Zog at Kelp Cellar
session: session 2026-11-24 Mara Zog | Tibor Ull 18:30, Kelp Ladder week 2 day 1
  Write session 2026-11-24 18:30 Mara Zog | Tibor Ull, Kelp Ladder week 2 day 1: a time of day stands behind the date [spelling-of-word]
  → session 2026-11-24 18:30 Mara Zog | Tibor Ull, Kelp Ladder week 2 day 1
session: session 2026-11-24 Mara Zog / Tibor Ull at Kelp Cellar
  Write session 2026-11-24 Mara Zog | Tibor Ull at Kelp Cellar: a bar stands between the athletes of a group [spelling-of-word]
  → session 2026-11-24 Mara Zog | Tibor Ull at Kelp Cellar
session: A circuit (3 rounds), rest 1:00
  Write A circuit, 3 rounds, rest 1:00: settings stand behind a comma, not in brackets [spelling-of-word]
  → A circuit, 3 rounds, rest 1:00
session: amrap (10 min)
  Write amrap 10:00: settings stand behind a comma, not in brackets [spelling-of-word]
  → amrap 10:00
session: A circuit - 3 rounds
  Write A circuit, 3 rounds: a comma stands before each setting [spelling-of-word]
  → A circuit, 3 rounds
session: A EMOM 10:00
  Write A every 1:00 for 10:00: work at each full minute [spelling-of-word]
  → A every 1:00 for 10:00
session: A E2MOM 12:00
  Write A every 2:00 for 12:00: work at each full minute of so many [spelling-of-word]
  → A every 2:00 for 12:00
session: e2mom x 6
  Write every 2:00 for 12:00: work at each full minute of so many [spelling-of-word]
  → every 2:00 for 12:00
session: E2MOM 12
  Write every 2:00 for 12:00 or every 2:00 for 24:00: the number may be minutes or times [missing-unit]
  → every 2:00 for 12:00
  → every 2:00 for 24:00
session: E90s x 8
  Write every 1:30 for 12:00: the whole time stands behind for [spelling-of-word]
  → every 1:30 for 12:00
session: A triset, 3 rounds
  Write A giant set, 3 rounds: three or more movements in turn are a giant set [spelling-of-word]
  → A giant set, 3 rounds
session: A giant-set, 3 rounds
  Write A giant set, 3 rounds: three or more movements in turn are a giant set [spelling-of-word]
  → A giant set, 3 rounds
session: A supersets, 3 rounds
  Write A superset, 3 rounds: one word [spelling-of-word]
  → A superset, 3 rounds
session: A amrap in 10:00
  Write A amrap 10:00: the time stands behind the word [spelling-of-word]
  → A amrap 10:00
session: A straight sets, rest 2:30
  Write A straight, rest 2:30: the word straight says so alone [spelling-of-word]
  → A straight, rest 2:30
session: A straight; rest 2:30
  Write A straight, rest 2:30: a comma stands before each setting [spelling-of-word]
  → A straight, rest 2:30
session: A 3 rounds circuit
  Write A circuit, 3 rounds: the kind of block comes before its settings [spelling-of-word]
  → A circuit, 3 rounds
session: 3 rounds for time, cap 10:00
  Write for time, 3 rounds, cap 10:00: the kind of block comes before its settings [spelling-of-word]
  → for time, 3 rounds, cap 10:00
session: A circuit 3 rounds / 1:00 rest
  Write A circuit 3 rounds, rest 1:00: the word comes before its time [spelling-of-word]
  → A circuit 3 rounds, rest 1:00
session: Block A straight
  Write A straight: the letter stands alone before the kind of block [spelling-of-word]
  → A straight
session: Block A: circuit, 3 rounds
  Write A circuit, 3 rounds: the letter stands alone before the kind of block [spelling-of-word]
  → A circuit, 3 rounds
session: Block A
  Write A straight or A circuit: a block says how it is done, and until then the lines below count to the block above [stray-line]
  → A straight
  → A circuit
session: 3 rounds:
  Write circuit, 3 rounds or superset, 3 rounds or for time, 3 rounds: a block says how it is done [stray-line]
  → circuit, 3 rounds
  → superset, 3 rounds
  → for time, 3 rounds
session: A 3 rounds
  Write A circuit, 3 rounds or A superset, 3 rounds or A for time, 3 rounds: a block says how it is done [stray-line]
  → A circuit, 3 rounds
  → A superset, 3 rounds
  → A for time, 3 rounds
session: WU Row: 5 @ 40 kg
  Write warmup Row: 5 @ 40 kg: the word is written in full [spelling-of-word]
  → warmup Row: 5 @ 40 kg
session: A1 w/u Row: 5 @ 40 kg
  Write A1 warmup Row: 5 @ 40 kg: the word is written in full [spelling-of-word]
  → A1 warmup Row: 5 @ 40 kg
session: warmup: Row: 5 @ 40 kg
  Write warmup Row: 5 @ 40 kg: nothing stands between the word and the name [spelling-of-word]
  → warmup Row: 5 @ 40 kg
session: Test: Row: 1 @ 80 kg
  Write test Row: 1 @ 80 kg: nothing stands between the word and the name [spelling-of-word]
  → test Row: 1 @ 80 kg
session: Row @ 60 kg: 5, 5, 5
  Write Row: 5, 5, 5 @ 60 kg: a load stands behind the sets [spelling-of-word]
  → Row: 5, 5, 5 @ 60 kg
session: Sled Push @ 60 kg: 2x20 m, rest 2:00
  Write Sled Push: 2x20 m @ 60 kg, rest 2:00: a load stands behind the sets [spelling-of-word]
  → Sled Push: 2x20 m @ 60 kg, rest 2:00
session: pain 3, left knee
  Write pain 3 left knee: nothing stands between the number and the place [spelling-of-word]
  → pain 3 left knee
session: pain 3: knee
  Write pain 3 knee: nothing stands between the number and the place [spelling-of-word]
  → pain 3 knee
session: rpe: 7
  Write effort 7: that is the whole session's; a set's rating stands behind its load, such as 5 @ 60 kg rpe 7 [stray-line]
  → effort 7
session: weight: 60.5 kg
  Write bodyweight 60.5 kg: a weigh-in is told by bodyweight; a load stands behind the sets, such as 5 @ 60 kg [stray-line]
  → bodyweight 60.5 kg
plan: wk 3 Row: 1 @ 90%
  Write week 3 Row: 1 @ 90%: week and its number stand right before the name [spelling-of-word]
  → week 3 Row: 1 @ 90%
plan: week 3: Row: 1 @ 90%
  Write week 3 Row: 1 @ 90%: week and its number stand right before the name [spelling-of-word]
  → week 3 Row: 1 @ 90%
plan: Week 3: deload
  A lighter week says what is left of its sets and loads, such as deload week 3, sets 50%, load 90% [missing-value]
plan: Week 4: deload, sets 50%
  Write deload week 4, sets 50%: the word deload comes first [spelling-of-word]
  → deload week 4, sets 50%
session: session 2026-11-24 Mara Zog 18h30
  Write session 2026-11-24 18:30 Mara Zog: a time of day stands behind the date [spelling-of-word]
  → session 2026-11-24 18:30 Mara Zog
`;
