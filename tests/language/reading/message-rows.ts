/**
 * What a coach is told, word for word: one line in an entry (`session`, `plan`, …, `file` for lines by themselves), and
 * below it what is said of it: `line:column message [code]`, then each fix with the line that it gives.
 */
export const MESSAGE_ROWS = `
# Loads
session: Back Squat: 5 @
    2:17 Expected a load such as 100 kg after @ [missing-load]
session: Back Squat: 5 @ 100
    2:19 Which unit has 100? Write kg or lb behind it, or units kg at the top of the file [missing-unit]
      → Write 100 kg: Back Squat: 5 @ 100 kg
      → Write 100 lb: Back Squat: 5 @ 100 lb
session: Back Squat: 5 @ 8
    2:19 Is 8 a load or an RPE? Write 8 kg or rpe 8 [load-or-rating]
      → Write 8 kg: Back Squat: 5 @ 8 kg
      → Write rpe 8: Back Squat: 5 @ rpe 8
session: Back Squat: 5 @ 60 kg, 5 @ 135 lb, 5 @ 100
    2:42 Two units on this line: write kg or lb behind 100 too [missing-unit]
      → Write 100 kg: Back Squat: 5 @ 60 kg, 5 @ 135 lb, 5 @ 100 kg
      → Write 100 lb: Back Squat: 5 @ 60 kg, 5 @ 135 lb, 5 @ 100 lb
session: Back Squat: 5 @ bw+5
    2:22 Which unit has 5? Write kg or lb behind it, or units kg at the top of the file [missing-unit]
      → Write 5 kg: Back Squat: 5 @ bw+5 kg
      → Write 5 lb: Back Squat: 5 @ bw+5 lb
session: Back Squat: 5 @ 100 lbs
    2:23 Write lb for lbs [spelling-of-unit]
      → Write lb: Back Squat: 5 @ 100 lb
session: Back Squat: 5 @ 22,5 kg
    2:19 Write 22.5 with a point: a comma begins something new [decimal-comma]
      → Write 22.5: Back Squat: 5 @ 22.5 kg
session: Back Squat: 5 @ 22,5, 5 @ 60 kg
    2:19 Write 22.5 with a point: a comma begins something new [decimal-comma]
      → Write 22.5: Back Squat: 5 @ 22.5, 5 @ 60 kg
session: Back Squat: 5 @ 100 kg rpe 7,5
    2:30 Write 7.5 with a point: a comma begins something new [decimal-comma]
      → Write 7.5: Back Squat: 5 @ 100 kg rpe 7.5
session: Back Squat: 5 @ 60 kg, 5, 5 @ 80 kg
    2:26 After the first load every set writes its own, and this one has none [set-without-load]
      → Add @ 60 kg: Back Squat: 5 @ 60 kg, 5 @ 60 kg, 5 @ 80 kg
      → Add @ 80 kg: Back Squat: 5 @ 60 kg, 5 @ 80 kg, 5 @ 80 kg
session: Back Squat: 5 @ 60 kg, 5
    2:26 After the first load every set writes its own, and this one has none [set-without-load]
      → Add @ 60 kg: Back Squat: 5 @ 60 kg, 5 @ 60 kg
session: Back Squat: 5 @ 3x18 kg
    2:19 3x: one implement is held, or two such as 2x18 kg [implement-count]
      → Write 2x: Back Squat: 5 @ 2x18 kg
session: Back Squat: 100 kg x 5
    2:15 Write 5 @ 100 kg: reps come before the load [reps-first]
      → Write 5 @ 100 kg: Back Squat: 5 @ 100 kg
session: Back Squat: 100 kg
    2:15 100 kg is a load: write the reps before it, such as 5 @ 100 kg [reps-first]
      → Write ? @ 100 kg: Back Squat: ? @ 100 kg
session: Back Squat: 225x5
    2:15 Write 5 @ 225: reps come before the load [reps-first]
      → Write 5 @ 225: Back Squat: 5 @ 225
session: Back Squat: 5 @ 10, 5 @ 100, 5 @ 105 kg
    2:19 10 kg is far from the other loads of this line, 100 to 105 kg: is a digit or a unit wrong? [uneven-loads]
      → Write 100: Back Squat: 5 @ 100, 5 @ 100, 5 @ 105 kg
session: Back Squat: 5 @ 1000, 5 @ 100 kg
    2:19 1000 kg is far from the other loads of this line, 100 kg: is a digit or a unit wrong? [uneven-loads]
      → Write 100: Back Squat: 5 @ 100, 5 @ 100 kg
session: Back Squat: 5 @ 2001 kg
    2:19 2001 kg is out of range: 0 to 2 000 kg [out-of-range]
session: Back Squat: 5 @ 301%
    2:19 301% is out of range: 0 to 300% [out-of-range]
session: Back Squat: 5 @ pin 101
    2:19 pin 101 is out of range: 0 to 100 [out-of-range]
session: Back Squat: 5 @ bw-pin 101
    2:22 pin 101 is out of range: 0 to 100 [out-of-range]
session: Back Squat: 5 @ 601 cm
    2:19 601 cm is out of range: 0 to 500 cm [out-of-range]
session: Rower: 500 m @ 2501 W
    2:18 2501 W is out of range: 0 to 2 500 W [out-of-range]
session: Run: 10:00 @ 61 km/h
    2:16 61 km/h is out of range: 0 to 60 km/h [out-of-range]
session: Rower: 500 m @ 0:00/500 m
    2:18 0:00/500 m is no pace: write a time for a distance, such as 2:05/500 m [unclear-time]
session: Rower: 500 m @ 2:05
    2:18 Expected a distance such as /500 m after 2:05 [syntax]
session: Rower: 500 m @ 2:05/500
    2:23 Expected a unit such as m or km after 500 [syntax]
session: Rower: 500 m @ 8 km/
    2:22 Expected a unit of time such as h after / [syntax]
session: Back Squat: 5 @ heavy
    2:19 Expected a load such as 100 kg, bw, or red band after heavy [syntax]
session: Back Squat: 5 @ red
    2:19 Expected a load such as 100 kg, bw, or red band after red [syntax]
session: Back Squat: 5 @ pin
    2:19 Expected a number such as pin 9 after pin [syntax]
session: Back Squat: 5 @ bw+
    2:21 Expected a weight, a pin or a band after + [syntax]
session: Back Squat: 5 @ bw+2 reps
    2:24 reps does not fit after 2: expected sets such as 3x5 @ 85 kg [syntax]
session: Back Squat: 5 @ 90 kg +
    2:25 Expected a load such as 100 kg after + [syntax]
session: Back Squat: 5 @ 90 kg + 10 kg
    2:30 Expected a load such as 100 kg after kg [syntax]
session: Back Squat: 5 @ 20 kg left
    2:25 Expected the right side such as 8 left 7 right after left [syntax]
session: Back Squat: 5 @ 20 kg left 22 kg
    2:33 Expected the word right after kg [syntax]
session: Back Squat: 5 @ 24&
    2:21 Expected a load such as 100 kg after & [syntax]
session: Back Squat: 5 @ 20-
    2:21 Expected a load such as 100 kg after "-" [syntax]
session: Back Squat: 5 @ 75% of
    2:23 Expected a movement or bw such as 75% of Back Squat after of [syntax]
session: Back Squat: 5 @ 2x75%
    2:19 Not all of 2x75% can be read: a percentage stands alone [syntax]
    2:19 75% is for plans: write the load that was used, or ? [for-plans]
      → Write ?: Back Squat: 5 @ ?
session: Back Squat: 5 @ 2x60 cm
    2:19 Not all of 2x60 cm can be read: a setting is one number [syntax]
session: Back Squat: 5 @ 2x20 kg left 22 kg right
    2:19 Not all of 2x20 kg left 22 kg right can be read: each side has one weight [syntax]
session: Back Squat: 5 @ 100 kg @ 90 kg
    2:26 @ does not fit after kg: expected sets such as 3x5 @ 85 kg [syntax]
session: Back Squat: 5 100 kg
    2:15 Write 5 @ 100 kg: an @ stands before the load [syntax]
      → Write 5 @ 100 kg: Back Squat: 5 @ 100 kg
session: Back Squat: 5 @ 100 kg tempo 3-1-X-0
    2:15 Put a comma before tempo [syntax]
      → Write 5 @ 100 kg, tempo 3-1-X-0: Back Squat: 5 @ 100 kg, tempo 3-1-X-0
session: Back Squat: 5 @ 100 kg drop
    2:26 A drop writes its reps and its own load, such as drop 8 @ 14 kg [missing-load]
session: Back Squat: 5 @ 100 kg drop 8
    2:26 A drop writes its reps and its own load, such as drop 8 @ 14 kg [missing-load]
plan: Back Squat: 5 @ 75-70%
    2:19 A range goes from the lower to the higher number [range-order]
plan: Back Squat: 5 @ 24-20 kg
    2:19 A range goes from the lower to the higher number [range-order]
plan: Back Squat: 5 @ rpe 8-7
    2:19 A range goes from the lower to the higher number [range-order]
plan: Back Squat: 5 @ rpe 11
    2:19 rpe 11 is out of range: 0 to 10 [out-of-range]
plan: Back Squat: 5 @ -
    2:19 Expected a load such as 100 kg after "-" [syntax]
plan: Back Squat: 5 @ rpe
    2:19 Expected a number such as rpe 8 after rpe [syntax]
session: Back Squat: 60 kg @ 3x5 rpe 8
    2:15 Write 3x5 @ 60 kg: reps come before the load [reps-first]
      → Write 3x5 @ 60 kg: Back Squat: 3x5 @ 60 kg rpe 8
session: Pull-up: 5 @ bw, 5 @ -20 kg
    2:24 -20 kg is for plans: write bw-20 kg for help, or the load that was used [for-plans]
      → Write bw-20 kg: Pull-up: 5 @ bw, 5 @ bw-20 kg
session: Back Squat: 2 @ 100 kg, 4 @ -10 kg
    2:31 -10 kg is for plans: write the load that was used, or ? [for-plans]
      → Write ?: Back Squat: 2 @ 100 kg, 4 @ ?
plan: Back Squat: 5 @ 65% of 1RM
    2:19 Write 65%: a percentage is of the max, or of the training max where the plan has one [spelling-of-word]
      → Write 65%: Back Squat: 5 @ 65%
plan: Back Squat: 5 @ 65 % of training max rpe 8
    2:19 Write 65 %: a percentage is of the max, or of the training max where the plan has one [spelling-of-word]
      → Write 65 %: Back Squat: 5 @ 65 % rpe 8
# Loads in a row
session: Back Squat: 5 @ 60, 65, 70 kg
    2:15 A load stands behind its own set: write 5 @ 60, 5 @ 65, 5 @ 70 kg [sets-spelled-apart]
      → Write 5 @ 60, 5 @ 65, 5 @ 70 kg: Back Squat: 5 @ 60, 5 @ 65, 5 @ 70 kg
session: Back Squat: 5 @ 80, 75, 70 kg, rest 2:00
    2:15 A load stands behind its own set: write 5 @ 80, 5 @ 75, 5 @ 70 kg [sets-spelled-apart]
      → Write 5 @ 80, 5 @ 75, 5 @ 70 kg: Back Squat: 5 @ 80, 5 @ 75, 5 @ 70 kg, rest 2:00
session: Back Squat: 5 @ 60 kg, 65 kg, 70 kg
    2:15 A load stands behind its own set: write 5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg [sets-spelled-apart]
      → Write 5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg: Back Squat: 5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg
session: Back Squat: 5 @ 60 kg, 65, 70
    2:15 Are these loads, or reps with the first one? Write 5 @ 60 kg, 5 @ 65, 5 @ 70 or 5 @ 60 kg, 65 @ 60 kg, 70 @ 60 kg [sets-spelled-apart]
      → Write 5 @ 60 kg, 5 @ 65, 5 @ 70: Back Squat: 5 @ 60 kg, 5 @ 65, 5 @ 70
      → Write 5 @ 60 kg, 65 @ 60 kg, 70 @ 60 kg: Back Squat: 5 @ 60 kg, 65 @ 60 kg, 70 @ 60 kg
session: Back Squat: 5 @ 60, 65, 70
    2:15 A load stands behind its own set: write 5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg [sets-spelled-apart]
      → Write 5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg: Back Squat: 5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg
      → Write 5 @ 60 lb, 5 @ 65 lb, 5 @ 70 lb: Back Squat: 5 @ 60 lb, 5 @ 65 lb, 5 @ 70 lb
session: Back Squat: 5 @ 60,65,70 kg
    2:15 A load stands behind its own set: write 5 @ 60, 5 @ 65, 5 @ 70 kg [sets-spelled-apart]
      → Write 5 @ 60, 5 @ 65, 5 @ 70 kg: Back Squat: 5 @ 60, 5 @ 65, 5 @ 70 kg
session: Back Squat: 5 @ 22,50, 25 kg rpe 8
    2:15 A load stands behind its own set: write 5 @ 22.50, 5 @ 25 kg rpe 8 [sets-spelled-apart]
      → Write 5 @ 22.50, 5 @ 25 kg rpe 8: Back Squat: 5 @ 22.50, 5 @ 25 kg rpe 8
session: Row: 8 @ 20 kg, 6 @ 22 kg, 24 kg
    2:19 A load stands behind its own set: write 6 @ 22 kg, 6 @ 24 kg [sets-spelled-apart]
      → Write 6 @ 22 kg, 6 @ 24 kg: Row: 8 @ 20 kg, 6 @ 22 kg, 6 @ 24 kg
plan: Back Squat: 5 @ 60, 65, 70 kg
    2:15 Are these sets, or the weeks? Write 5 @ 60, 5 @ 65, 5 @ 70 kg or 5 @ 60 | 5 @ 65 | 5 @ 70 kg [sets-spelled-apart]
      → Write 5 @ 60, 5 @ 65, 5 @ 70 kg: Back Squat: 5 @ 60, 5 @ 65, 5 @ 70 kg
      → Write 5 @ 60 | 5 @ 65 | 5 @ 70 kg: Back Squat: 5 @ 60 | 5 @ 65 | 5 @ 70 kg
session: Back Squat: 5 @ 60, 70, 60 kg
    2:15 A load stands behind its own set: write 5 @ 60, 5 @ 70, 5 @ 60 kg [sets-spelled-apart]
      → Write 5 @ 60, 5 @ 70, 5 @ 60 kg: Back Squat: 5 @ 60, 5 @ 70, 5 @ 60 kg
session: Back Squat: 5 @ 60, 65, 70 kg drop 8 @ 50 kg
    2:15 A load stands behind its own set: write 5 @ 60, 5 @ 65, 5 @ 70 kg drop 8 @ 50 kg [sets-spelled-apart]
      → Write 5 @ 60, 5 @ 65, 5 @ 70 kg drop 8 @ 50 kg: Back Squat: 5 @ 60, 5 @ 65, 5 @ 70 kg drop 8 @ 50 kg
session: Row: 10 @ 2x12, 2x14, 2x16 kg
    2:8 A load stands behind its own set: write 10 @ 2x12, 10 @ 2x14, 10 @ 2x16 kg [sets-spelled-apart]
      → Write 10 @ 2x12, 10 @ 2x14, 10 @ 2x16 kg: Row: 10 @ 2x12, 10 @ 2x14, 10 @ 2x16 kg
session: Row: 40 @ 35 kg, 38
    2:20 After the first load every set writes its own, and this one has none [set-without-load]
      → Add @ 35 kg: Row: 40 @ 35 kg, 38 @ 35 kg
session: Row: 10 @ 10 kg, 12
    2:20 After the first load every set writes its own, and this one has none [set-without-load]
      → Add @ 10 kg: Row: 10 @ 10 kg, 12 @ 10 kg
session: Row: 5 @ 60 kg, 8, 70 kg
    2:19 After the first load every set writes its own, and this one has none [set-without-load]
      → Add @ 60 kg: Row: 5 @ 60 kg, 8 @ 60 kg, 70 kg
    2:22 70 kg is a load: write the reps before it, such as 5 @ 70 kg [reps-first]
      → Write ? @ 70 kg: Row: 5 @ 60 kg, 8, ? @ 70 kg
# Ratings
session: Back Squat: 5 @ 100 kg rpe
    2:26 Expected a number after rpe [missing-value]
session: Back Squat: 5 @ 100 kg rpe 11
    2:26 rpe 11 is out of range: 0 to 10 [out-of-range]
session: Back Squat: 5 @ 100 kg rpe 7.3
    2:26 rpe 7.3: RPE goes in half points such as 7.5 [out-of-range]
      → Write rpe 7.5: Back Squat: 5 @ 100 kg rpe 7.5
session: Back Squat: 5 @ 100 kg rir 11
    2:26 rir 11 is out of range: 0 to 10 [out-of-range]
session: Back Squat: 5 @ 100 kg hr 20
    2:26 hr 20 is out of range: 25 to 250 beats a minute [out-of-range]
session: Back Squat: 5 @ 100 kg hr
    2:26 Expected a number after hr [missing-value]
session: Back Squat: 5 @ 100 kg v 3.5 m/s
    2:26 v 3.5 m/s is out of range: 0 to 3 m/s [out-of-range]
session: Back Squat: 5 @ 100 kg v 0.5 km/h
    2:26 The speed of a bar is written in m/s, such as v 0.45 m/s [missing-unit]
session: Back Squat: 5 @ 100 kg v 0.5
    2:28 Expected m/s after 0.5 [syntax]
session: Back Squat: 5 @ 100 kg rpe 7, 8, 8
    2:33 A rating stands behind its own set, such as 5 @ 100 kg rpe 8: are these sets or ratings? [rating-list]
      → Write each set with its rating: Back Squat: 5 @ 100 kg rpe 7, 5 @ 100 kg rpe 8, 5 @ 100 kg rpe 8
session: Back Squat: 3x5 @ 100 kg rpe 7, 8, 8
    2:35 A rating stands behind its own set, such as 5 @ 100 kg rpe 8: are these sets or ratings? [rating-list]
      → Write each set with its rating: Back Squat: 5 @ 100 kg rpe 7, 5 @ 100 kg rpe 8, 5 @ 100 kg rpe 8
session: Push-up: 3x12 rpe 7, 8, 9
    2:24 A rating stands behind its own set, such as 5 @ 100 kg rpe 8: are these sets or ratings? [rating-list]
      → Write each set with its rating: Push-up: 12 rpe 7, 12 rpe 8, 12 rpe 9
session: Back Squat: 8/side @ 20 kg rpe 7, 8
    2:37 A rating stands behind its own set, such as 5 @ 100 kg rpe 8: are these sets or ratings? [rating-list]
# Amounts
session: Back Squat:
    2:3 Expected sets after the colon, such as 3x5 @ 85 kg [missing-sets]
session: : 5 @ 100 kg
    2:3 Expected a movement before the colon [missing-name]
session: Push-up: 8 reps
    2:14 Reps need no unit: write 8 [spelling-of-unit]
      → Write 8: Push-up: 8
session: Plank: 30 sec
    2:13 Write s for sec [spelling-of-unit]
      → Write s: Plank: 30 s
session: Push-up: 1001
    2:12 1001 is out of range: 0 to 1 000 reps [out-of-range]
session: Push-up: 7.5
    2:12 7.5 reps: reps are whole numbers [out-of-range]
session: Push-up: 51x5 @ bw
    2:12 51 sets is out of range: 1 to 50 sets [out-of-range]
session: Push-up: 2.5x5
    2:12 2.5 sets: only whole numbers count here [out-of-range]
session: Run: 25:00:00
    2:8 25:00:00 is out of range: 0 to 24 h [out-of-range]
session: Run: 501 km
    2:8 501 km is out of range: 0 to 500 km [out-of-range]
session: Run: 1:75
    2:8 1:75 is no time: write minutes and seconds such as 1:05 [unclear-time]
session: Bike: 10001 cal
    2:9 10001 cal is out of range: 0 to 10 000 cal [out-of-range]
session: Pull-up: 21-15-9
    2:12 21-15-9 is several sets: write 21, 15, 9 [sets-spelled-apart]
      → Write 21, 15, 9: Pull-up: 21, 15, 9
session: Row: 10/10
    2:8 Write 10/side for 10/10 [side-slip]
      → Write 10/side: Row: 10/side
session: Row: 8/7
    2:8 Write 8 left 7 right for 8/7 [side-slip]
      → Write 8 left 7 right: Row: 8 left 7 right
session: Row: 8 each
    2:8 Write 8/side for 8 each [side-slip]
      → Write 8/side: Row: 8/side
session: Row: 8/leg
    2:8 Write 8/side for 8/leg [side-slip]
      → Write 8/side: Row: 8/side
session: Rower: 4x500 m, 2:05/500
    2:19 2:05/500 is a pace: write it behind @ with its unit, such as 500 m @ 2:05/500 m [syntax]
session: Rower: 500 m, 2:05
    2:10 Did 500 m take 2:05? Then write 500 m in 2:05: behind a comma the time is a set of its own [time-as-set]
      → Write 500 m in 2:05: Rower: 500 m in 2:05
session: Run: 5 km, 25:30, rest 2:00
    2:8 Did 5 km take 25:30? Then write 5 km in 25:30: behind a comma the time is a set of its own [time-as-set]
      → Write 5 km in 25:30: Run: 5 km in 25:30, rest 2:00
session: Run: 400 m in 2.05
    2:17 Write 2:05: minutes and seconds stand on both sides of a colon [unclear-time]
      → Write 2:05: Run: 400 m in 2:05
session: done in 11.20
    2:11 Write 11:20: minutes and seconds stand on both sides of a colon [unclear-time]
      → Write 11:20: done in 11:20
session: Row: 8/
    2:9 Expected /side after / [syntax]
session: Row: 8 left
    2:10 Expected the right side such as 8 left 7 right after left [syntax]
session: Row: 8 left 7
    2:15 Expected the word right after 7 [syntax]
session: Row: 4 of
    2:10 of does not fit after 4: expected sets such as 3x5 @ 85 kg [syntax]
session: Row: 6 of 5
    2:8 6 of 5: the reps that were made come first, then those tried [range-order]
      → Write 5 of 6: Row: 5 of 6
session: Row: 4 of 5.5
    2:8 4 of 5.5: only whole numbers count here [out-of-range]
plan: Row: 12-8
    2:8 12-8: a range goes from the lower to the higher number, and both count the same [range-order]
      → Write 8-12: Row: 8-12
      → Write 12, 8 as two sets: Row: 12, 8
plan: Row: 30 s-20
    2:8 30 s-20: a range goes from the lower to the higher number, and both count the same [range-order]
plan: Row: 8-
    2:9 Expected a number with its unit such as 30 s after "-" [syntax]
session: Row: (2+2
    2:11 Expected a closing ) after 2 [syntax]
session: Row: (2+
    2:10 Expected a number with its unit such as 30 s after + [syntax]
session: Row: (
    2:8 Expected a number with its unit such as 30 s after ( [syntax]
session: Row: (51x2)
    2:9 51 mini-sets is out of range: 1 to 50 sets [out-of-range]
session: Row: (2 rest
    2:11 Expected a time such as 1:15 after rest [syntax]
session: Run: 400 m in
    2:8 Expected a time after in, such as 400 m in 1:32 [missing-value]
session: Run: 400 m in 92
    2:17 Which unit has 92? Write it behind the number, such as 92 s [missing-unit]
      → Write 92 s: Run: 400 m in 92 s
      → Write 92 min: Run: 400 m in 92 min
session: Run: 400 m in 92 m
    2:17 m stands for metres: write min for minutes [unclear-time]
      → Write 92 min: Run: 400 m in 92 min
session: Run: 400 m in 2 km
    2:17 2 km is a distance: a time is written such as 1:30 or 45 s [unclear-time]
session: Row: 3x
    2:9 x does not fit after 3: expected sets such as 3x5 @ 85 kg [syntax]
session: Row: 5 rpe 8 100 kg
    2:16 Write @ before a load, or a comma before the next set: 8 and 100 stand side by side [syntax]
# Items
session: Row: 5, slowly
    2:11 "slowly" is no set and no tempo, rest, setting or pain: write it as a setting, or as a note on a line with > [unknown-item]
      → Write setting slowly: Row: 5, setting slowly
      → Write it as a note below: Row: 5 ⏎     > slowly
session: Row: 5, $
    2:11 "$" is no set and no tempo, rest, setting or pain: write it as a setting, or as a note on a line with > [unknown-item]
session: Row: 5, slowly 8
    2:11 "slowly" is no set and no tempo, rest, setting or pain: write it as a setting, or as a note on a line with > [unknown-item]
    2:18 8 does not fit after slowly: expected sets such as 3x5 @ 85 kg [syntax]
session: Row: 5, done
    2:11 Write ? for a set that was done and not noted [syntax]
      → Write ?: Row: 5, ?
session: Row: 5 slowly
    2:8 "slowly" is no part of a set: write it as a note on a line with > [unknown-item]
      → Write it as a note below: Row: 5 ⏎     > slowly
session: Row: 5, tempo
    2:11 Expected a tempo such as 3-1-X-0 after tempo [tempo-form]
session: Row: 5, tempo 31X0
    2:17 A tempo has three or four phases with dashes between them, such as 3-1-X-0: down, pause, up, pause [tempo-form]
      → Write 3-1-X-0: Row: 5, tempo 3-1-X-0
session: Row: 5, tempo 3-1
    2:17 A tempo has three or four phases with dashes between them, such as 3-1-X-0: down, pause, up, pause [tempo-form]
session: Row: 5, rest
    2:11 Expected a time after rest, such as 1:30 [missing-value]
session: Row: 5, rest 90
    2:16 Which unit has 90? Write it behind the number, such as 90 s [missing-unit]
      → Write 90 s: Row: 5, rest 90 s
      → Write 90 min: Row: 5, rest 90 min
session: Row: 5, rest 5 m
    2:16 m stands for metres: write min for minutes [unclear-time]
      → Write 5 min: Row: 5, rest 5 min
session: Row: 5, setting
    2:11 Expected what is set after setting, such as box 40 cm [missing-value]
session: Row: 5, pain
    2:11 Expected a number from 0 to 10 after pain, and where it hurts [missing-value]
session: Row: 5, pain 11 knee
    2:11 pain 11 is out of range: 0 to 10 [out-of-range]
session: Row: 5, pain knee
    2:16 knee does not fit after pain: expected sets such as 3x5 @ 85 kg [syntax]
session: Row: 5, instead of
    2:11 Expected a movement after instead of [missing-value]
session: Row: 5, instead
    2:11 Expected of and a movement after instead [syntax]
plan: Row: 5, rest 3:00-2:00
    2:11 A range goes from a shorter to a longer rest [range-order]
plan: Row: 5, rest -
    2:16 Expected a step such as -10 s each week after "-" [syntax]
plan: Row: 5, +2.5
    2:11 A step needs its unit, such as +1 rep, +2.5 kg or +5 s [missing-unit]
plan: Row: 5, +
    2:11 Expected a step such as +2.5 kg each week after + [syntax]
plan: Row: 5, +2.5 kg each
    2:19 Expected each round, each session, each week or each cycle after each [syntax]
plan: Row: 5, +2.5 kg each month
    2:24 Expected each round, each session, each week or each cycle after each, found month [syntax]
plan: Row: 5, +2.5 kg to
    2:19 Expected a number such as to 16 after to [syntax]
plan: Row: 5, +2.5 kg from
    2:19 Expected a number of reps such as from 8 after from [syntax]
plan: Row: 5, then
    2:11 Expected a step such as +2.5 kg after then [syntax]
plan: Row: 5, after
    2:11 Expected a number of misses after after [syntax]
plan: Row: 5, after 3
    2:17 Expected tempo, rest, setting, pain or a step after 3 [syntax]
plan: Row: 5, after 3 misses
    2:19 Expected a step such as +2.5 kg after misses [syntax]
session: warm-up Row: 5
    2:3 Write warmup for warm-up [spelling-of-word]
      → Write warmup: warmup Row: 5
# What only a plan may say
session: Row: 8-12/side
    2:8 8-12/side is for plans: write how many were done [for-plans]
      → Write 8/side: Row: 8/side
      → Write 12/side: Row: 12/side
session: Row: 5+
    2:8 5+ is for plans: write how many were done [for-plans]
      → Write 5: Row: 5
session: Row: amrap
    2:8 amrap is for plans: write how many were done, or ? [for-plans]
      → Write ?: Row: ?
session: Row: 5 @ 75%
    2:12 75% is for plans: write the load that was used, or ? [for-plans]
      → Write ?: Row: 5 @ ?
session: Row: 5 @ 75% of Back Squat
    2:12 75% of Back Squat is for plans: write the load that was used, or ? [for-plans]
      → Write ?: Row: 5 @ ?
session: Row: 5 @ -10%
    2:12 -10% is for plans: write the load that was used, or ? [for-plans]
      → Write ?: Row: 5 @ ?
session: Row: 5 @ rpe 8
    2:12 rpe 8 in place of a load is for plans: write the load, and the rating behind it [for-plans]
      → Write ? rpe 8: Row: 5 @ ? rpe 8
session: Row: 5 @ 20-24 kg
    2:12 20-24 kg is for plans: write the load that was used [for-plans]
      → Write 20 kg: Row: 5 @ 20 kg
      → Write 24 kg: Row: 5 @ 24 kg
session: Row: 5 @ 20 kg rpe 7-8
    2:18 rpe 7-8 is for plans: write one rating [for-plans]
      → Write rpe 7: Row: 5 @ 20 kg rpe 7
      → Write rpe 8: Row: 5 @ 20 kg rpe 8
session: Row: 5 @ 20 kg, rest 2:00-3:00
    2:19 A range of rests is for plans: write the rest that was taken [for-plans]
      → Write rest 2:00: Row: 5 @ 20 kg, rest 2:00
      → Write rest 3:00: Row: 5 @ 20 kg, rest 3:00
session: Row: 5 @ 20 kg drop 8-10 @ 14 kg
    2:18 A drop that leaves its reps or load open is for plans: write what was done [for-plans]
session: Row: 5 @ 20 kg, +2.5 kg each week
    2:19 A step is for plans: a session says what was done [for-plans]
      → Take it out: Row: 5 @ 20 kg
session: week 5 Row: 5 @ 20 kg
    2:3 week 5 is for plans: a session has its date [for-plans]
      → Take out week 5: Row: 5 @ 20 kg
session: A circuit, rest 1:00-1:30
    2:3 A range of rests is for plans: write one rest [for-plans]
session: rest 1:15-1:30
    2:3 A range of rests is for plans: write the rest that was taken [for-plans]
      → Write rest 1:15: rest 1:15
      → Write rest 1:30: rest 1:30
session: rest -10 s each week
    2:3 A step is for plans: write the rests that were taken, such as rest 1:10, 1:25 [for-plans]
session: B circuit, 3 rounds, +1 round each week
    2:24 A step is for plans: write the rounds that were done, such as 4 rounds [for-plans]
plan: B circuit, 3 rounds, +1 rep each week
    2:24 A block's header has steps of rounds alone, such as +1 round each week: write +1 rep each week behind the sets of a line [unknown-item]
plan: B circuit, 3 rounds, +1 round each week, +2 rounds each week
    2:44 a step of rounds stands here twice: the last one counts [repeated-property]
# Blocks
session: A circuit, 4 laps
    2:14 Expected a setting such as 4 rounds or rest 1:15 after ",", found 4 [syntax]
session: A circuit, quickly
    2:14 A block knows no "quickly": it takes rounds, rest, cap and alternating [unknown-item]
session: A circuit, 201 rounds
    2:14 201 rounds is out of range: 1 to 200 rounds [out-of-range]
session: A circuit, 2.5 rounds
    2:14 2.5 rounds: only whole numbers count here [out-of-range]
session: A circuit, 4 rounds x
    2:23 Expected rounds such as 4 rounds or 3 rounds x 2 passes after x [syntax]
session: A circuit, 4 rounds x 51 passes
    2:14 51 passes is out of range: 1 to 50 passes [out-of-range]
session: A circuit, rest
    2:14 Expected a time after rest, such as 1:15 [missing-value]
session: A circuit, rest 90
    2:19 Which unit has 90? Write it behind the number, such as 90 s [missing-unit]
      → Write 90 s: A circuit, rest 90 s
      → Write 90 min: A circuit, rest 90 min
session: A circuit, cap
    2:14 Expected a time after cap, such as 12:00 [missing-value]
session: A circuit 4
    2:13 Expected rounds such as 4 rounds or 3 rounds x 2 passes after 4 [syntax]
session: every
    2:3 Expected times such as every 1:00 for 10:00 [missing-value]
session: every 1:00 for
    2:3 Expected times such as every 1:00 for 10:00 [missing-value]
session: every 0:00 for 10:00
    2:3 The time from one start to the next is above 0 [out-of-range]
session: amrap
    2:3 Expected how long it goes on, such as amrap 12:00 [missing-value]
session: intervals
    2:3 Expected intervals 0:40 on, 0:20 off, or intervals 6 x 500 m [missing-value]
session: intervals 6 x
    2:3 Expected intervals 0:40 on, 0:20 off, or intervals 6 x 500 m [missing-value]
session: intervals 6 x 500 m off
    2:23 off does not fit after m: expected a setting such as 4 rounds or rest 1:15 [syntax]
session: intervals 0:75 on
    2:3 0:75 is no time: write minutes and seconds such as 1:05 [unclear-time]
session: intervals 201 x 500 m
    2:3 201 intervals is out of range: 1 to 200 rounds [out-of-range]
plan: A circuit, rest 3:00-2:00
    2:14 A range goes from a shorter to a longer rest [range-order]
session: A cool-down
    2:3 Write A cooldown: one word [spelling-of-word]
      → Write A cooldown: A cooldown
session: time
    2:3 Expected times after time, such as 2:55, 3:02, ? [missing-value]
session: time soon
    2:8 soon does not fit after time: expected times such as 2:55, 3:02, ? [syntax]
session: A circuit / time 2:55 @ 3:02
    3:13 @ does not fit after 2:55: expected times such as 2:55, 3:02, ? [syntax]
session: A circuit / time 2:75
    3:8 2:75 is no time: write minutes and seconds such as 1:05 [unclear-time]
session: A circuit / time 2:00 / time 3:00
    4:3 time stands here twice: the last one counts [repeated-property]
session: done
    2:3 Expected how it ended, such as done in 9:48 or done 2 of 4 rounds [missing-value]
session: done 4 laps
    2:10 Expected a result such as in 9:48 or 2 of 4 rounds after 4, found laps [syntax]
session: done 4 of
    2:10 Expected a number such as 2 of 4 rounds after of [syntax]
session: done in
    2:8 Expected a time such as 1:32 after in [syntax]
session: done 2.5 rounds
    2:3 2.5 rounds: write whole rounds and what was added, such as done 4 rounds + 5 [out-of-range]
session: done 1001 rounds
    2:3 1001 rounds is out of range: 0 to 1 000 rounds [out-of-range]
session: done 4 rounds +
    2:17 Expected a number with its unit such as 30 s after + [syntax]
session: done in 9:00 / done in 9:01
    3:3 done stands here twice: the last one counts [repeated-property]
session: rest
    2:3 Expected a time after rest, such as 1:15 [missing-value]
session: rest 90
    2:8 Which unit has 90? Write it behind the number, such as 90 s [missing-unit]
      → Write 90 s: rest 90 s
      → Write 90 min: rest 90 min
session: rest -
    2:8 Expected a step such as -10 s each week after "-" [syntax]
plan: rest 3:00-2:00
    2:3 A range goes from a shorter to a longer rest [range-order]
session: A circuit, 4 rounds / Row: 8, 8, 8 @ 20 kg
    3:8 3 sets for 4 rounds: write one that is the same in every round, or 4 [round-count]
      → Add ? for a round: Row: 8, 8, 8, ? @ 20 kg
session: A circuit, 4 rounds / Row: 8 @ 20 kg, 8 @ 24 kg
    3:8 2 sets for 4 rounds: write one that is the same in every round, or 4 [round-count]
      → Add ? @ ? for 2 rounds: Row: 8 @ 20 kg, 8 @ 24 kg, ? @ ?, ? @ ?
session: A circuit, 4 rounds / Row: 5x8
    3:8 5 sets for 4 rounds: write one that is the same in every round, or 4 [round-count]
session: A circuit, 3 rounds x 2 passes / Row: 8, 8
    3:8 2 sets for 3 rounds x 2 passes: write one that is the same in every round, or 3 [round-count]
      → Add ? for a round: Row: 8, 8, ?
session: A circuit, 1 round / Row: 8, 8
    3:8 2 sets for 1 round: write one that is the same in every round, or 1 [round-count]
session: A circuit, 3 rounds / Row: 8 / time 2:00, 3:00
    4:3 2 times for 3 rounds: write one for each round, and ? for one that was not taken [time-count]
      → Add ? for a round: time 2:00, 3:00, ?
session: A circuit, 3 rounds / Row: 8 / time 2:00
    4:3 1 time for 3 rounds: write one for each round, and ? for one that was not taken [time-count]
      → Add ? for 2 rounds: time 2:00, ?, ?
session: A straight / Row: 8 / time 2:00
    4:3 time is for rounds, and straight sets have none: write such times in a note [time-count]
session: A straight / Row: 8 / time 50 min
    4:3 time is for rounds, and straight sets have none: lasted says how long a session took [time-count]
      → Write lasted 50 min: lasted 50 min
session: A amrap 12:00 / Row: 8 / Pull: 5 / done 4 rounds + 10
    5:3 10 are more than the 8 of Row: behind a plus stands what was done of each movement in turn, such as + 10 + 2 [done-mismatch]
      → Write done 4 rounds + 8 + 2: done 4 rounds + 8 + 2
session: A circuit, 4 rounds / Row: 8 / done 2 of 5 rounds
    4:3 The block has 4 rounds, not 5 [done-mismatch]
      → Write done 2 of 4 rounds: done 2 of 4 rounds
session: A circuit, 4 rounds / Row: 8 / done 5 rounds
    4:3 5 rounds done are more than the 4 that there were [done-mismatch]
session: A amrap 12:00 / Row: 8 / done in 9:00
    4:3 An amrap ends by its clock: write what was done in it, such as done 4 rounds + 5 [done-mismatch]
session: A for time, cap 9:00 / Row: 8 / done in 9:30
    4:3 9:30 is past the cap of 9:00 [done-mismatch]
session: Row: 8 | 9
    2:3 A | separates the athletes of a group, and this session has one athlete: sets are separated by commas [cell-count]
file: session 2026-11-17 Nell | Tibor | Bev / Row: 8 | 9
    2:1 2 values between | for 3 athletes: write one for all, or one for each [cell-count]
session: B circuit, 3 rounds /   Push-up: 10 / Plank: 45 s
    4:3 Plank counts in each of the 3 rounds above: write a line such as C straight before it, or indent it like the others [joins-rounds]
      → Begin C straight here: C straight ⏎   Plank: 45 s
session: circuit, 3 rounds /   Push-up: 10 /   time 2:00, ?, ? /   Plank: 45 s
    5:5 Plank counts in each of the 3 rounds above: write a line such as straight before it, or put it above the times [joins-rounds]
      → Begin straight here: straight ⏎     Plank: 45 s
# Sessions
file: session
    1:1 Expected a date after session, such as 2026-11-17 [missing-value]
file: session Ivo Brundt
    1:1 Expected a date after session, such as 2026-11-17 [missing-value]
file: session 17.11.2026 Ivo
    1:9 17.11.2026 is no date that can be read without doubt: write year-month-day, such as 2026-11-17 [odd-date]
      → Write 2026-11-17: session 2026-11-17 Ivo
file: session 3.4.2026 Ivo
    1:9 3.4.2026 is no date that can be read without doubt: write year-month-day, such as 2026-11-17 [odd-date]
      → Write 2026-04-03: session 2026-04-03 Ivo
      → Write 2026-03-04: session 2026-03-04 Ivo
file: session 11/17 Ivo
    1:9 11/17 is no date that can be read without doubt: write year-month-day, such as 2026-11-17 [odd-date]
file: session 2026/11/17 Ivo
    1:9 2026/11/17 is no date that can be read without doubt: write year-month-day, such as 2026-11-17 [odd-date]
      → Write 2026-11-17: session 2026-11-17 Ivo
file: session 26-11-24 Ivo
    1:9 26-11-24 is no date that can be read without doubt: write year-month-day, such as 2026-11-17 [odd-date]
      → Write 2026-11-24: session 2026-11-24 Ivo
      → Write 2024-11-26: session 2024-11-26 Ivo
file: session 20261117 Ivo
    1:9 20261117 is no date that can be read without doubt: write year-month-day, such as 2026-11-17 [odd-date]
      → Write 2026-11-17: session 2026-11-17 Ivo
file: session 2026-1-7 Ivo
    1:9 Write the date as 2026-01-07 [odd-date]
      → Write 2026-01-07: session 2026-01-07 Ivo
file: session 2026-06-31 Ivo
    1:9 The calendar has no 2026-06-31: look at the day and the month [impossible-date]
file: session 2026 Ivo
    1:9 2026 is no date that can be read without doubt: write year-month-day, such as 2026-11-17 [odd-date]
file: session 2026-11-17 25:10 Ivo
    1:1 25:10 is no time of day: write it such as 07:10 or 18:30 [unclear-time]
file: session 2026-11-17 Ivo |
    1:24 Expected a name after | [syntax]
file: session 2026-11-17 Ivo at
    1:1 Expected a place's name after at [missing-value]
file: session 2026-11-17 Ivo,
    1:1 Expected a plan with its week and day after the comma [missing-value]
file: session 2026-11-17 Ivo, Base week 105
    1:25 Base week 105 is out of range: 1 to 104 weeks [out-of-range]
file: session 2026-11-17 Ivo at Loft at Hall
    1:32 at does not fit after Loft: expected a date, an athlete, at a place, then a plan [syntax]
session: effort
    2:3 Expected a number from 0 to 10 after effort [missing-value]
session: effort @ 8
    2:10 @ does not fit after effort: expected a number from 0 to 10 [syntax]
session: effort 11
    2:10 effort 11 is out of range: 0 to 10 [out-of-range]
session: effort 7 |
    2:12 Expected a number from 0 to 10 after | [syntax]
session: effort 7 / effort 8
    3:3 effort stands here twice: the last one counts [repeated-property]
session: lasted
    2:3 Expected a time after lasted, such as 58 min [missing-value]
session: lasted 58
    2:10 Which unit has 58? Write it behind the number, such as 58 min [missing-unit]
      → Write 58 min: lasted 58 min
session: lasted 52 m
    2:10 m stands for metres: write min for minutes [unclear-time]
      → Write 52 min: lasted 52 min
session: lasted 1:05
    2:10 Is 1:05 hours and minutes, or minutes and seconds? Write it such as 65 min [unclear-time]
      → Write 65 min: lasted 65 min
      → Write 0:01:05: lasted 0:01:05
session: lasted 58:30
    2:10 Is 58:30 hours and minutes, or minutes and seconds? Write it such as 65 min [unclear-time]
      → Write 0:58:30: lasted 0:58:30
session: lasted @ 58
    2:10 @ does not fit after lasted: expected a time such as 58 min [syntax]
session: bodyweight
    2:3 Expected a weight after bodyweight, such as 68.2 kg [missing-value]
session: bodyweight 68,2 kg
    2:14 Write 68.2 with a point: a comma begins something new [decimal-comma]
      → Write 68.2: bodyweight 68.2 kg
session: bodyweight 19 kg
    2:14 19 kg is out of range: 20 kg to 400 kg [out-of-range]
session: bodyweight 68.2
    2:14 Which unit has 68.2? Write kg or lb behind it, or units kg at the top of the file [missing-unit]
      → Write 68.2 kg: bodyweight 68.2 kg
      → Write 68.2 lb: bodyweight 68.2 lb
session: sleep
    2:3 Expected hours after sleep, such as 7 h [missing-value]
session: sleep 7
    2:9 Which unit has 7? Write it behind the number, such as 7 h [missing-unit]
      → Write 7 h: sleep 7 h
session: sleep 25 h
    2:9 25 h is out of range: 0 to 24 h [out-of-range]
session: sleep @ 7
    2:9 @ does not fit after sleep: expected hours such as 7 h [syntax]
session: readiness
    2:3 Expected a number from 1 to 5 after readiness [missing-value]
session: readiness 6
    2:3 readiness 6 is out of range: 1 to 5 [out-of-range]
session: readiness @ 4
    2:13 @ does not fit after readiness: expected a number from 1 to 5 [syntax]
session: pain
    2:3 Expected a number from 0 to 10 after pain, and where it hurts [missing-value]
session: pain 11 knee
    2:3 pain 11 is out of range: 0 to 10 [out-of-range]
session: pain knee
    2:8 knee does not fit after pain: expected a number from 0 to 10 and where it hurts [syntax]
session: missed @ ferry
    2:10 @ does not fit after missed: expected a comma and the reason [syntax]
# Plans
plan: for
    2:3 Expected an athlete's name after for [missing-value]
plan: at
    2:3 Expected a place's name after at [missing-value]
plan: starts
    2:3 Expected a date after starts, such as 2026-11-09 [missing-value]
plan: starts soon
    2:10 soon does not fit after starts: expected a date such as 2026-11-17 [syntax]
plan: follows
    2:3 Expected a plan's name after follows [missing-value]
plan: weeks
    2:3 Expected a number after weeks, such as weeks 6 [missing-value]
plan: weeks 105
    2:3 105 weeks is out of range: 1 to 104 weeks [out-of-range]
plan: weeks 6.5
    2:3 6.5 weeks: only whole numbers count here [out-of-range]
plan: weeks six
    2:9 six does not fit after weeks: expected a number of weeks [syntax]
plan: deload
    2:3 Expected a week and its shares, such as deload week 6, sets 50%, load 90% [missing-value]
plan: deload week 4
    2:3 deload week 4 makes nothing lighter: write its shares, such as deload week 4, sets 50%, load 90% [missing-value]
plan: deload week 105
    2:3 week 105 is out of range: 1 to 104 weeks [out-of-range]
plan: deload @ 6
    2:10 @ does not fit after deload: expected week 6, sets 50%, load 90% [syntax]
plan: deload week 6, sets 301%
    2:18 sets 301% is out of range: 0 to 300% [out-of-range]
plan: deload week 6, @ 50%
    2:18 @ does not fit after ",": expected week 6, sets 50%, load 90% [syntax]
plan: deload week 6, sets 50
    2:23 Expected a % sign after 50 [syntax]
plan: day 1.5 Push
    2:3 day 1.5 Push: only whole numbers count here [out-of-range]
plan: week 1.5 Row: 5
    2:3 week 1.5: only whole numbers count here [out-of-range]
plan: Row: 5, +1 rep each week, after 2.5 misses -10%
    2:29 2.5 misses: only whole numbers count here [out-of-range]
plan: days
    2:3 Expected days such as Mon, Wed, Fri, or alternate, 3 a week [missing-value]
plan: days alternate
    2:3 Expected how many days a week, such as days alternate, 3 a week [missing-value]
plan: days alternate, 8 a week
    2:3 8 a week is out of range: 1 to 7 days a week [out-of-range]
plan: days alternate, 3
    2:19 Expected a week after 3 [syntax]
plan: days Mon @ Wed
    2:12 @ does not fit after Mon: expected days such as Mon, Wed, Fri or alternate, 3 a week [syntax]
plan: days monday
    2:8 Write Mon for monday [spelling-of-word]
      → Write Mon: days Mon
plan: days Mno
    2:8 Mno is no day of the week: write Mon [vocabulary]
      → Write Mon: days Mon
plan: days X
    2:8 X is no day of the week: write Mon, Tue, Wed, Thu, Fri, Sat, Sun [vocabulary]
plan: day
    2:3 Expected the number of the day, such as day 1 [missing-value]
plan: day 1 / day 1
    3:3 day 1 stands here twice: the last one counts [repeated-property]
plan: training
    2:3 Expected a share such as training max 90% after training [syntax]
plan: training max
    2:3 Expected a share such as training max 90% [missing-value]
plan: training max 90 kg
    2:19 Expected a % sign after 90, found kg [syntax]
plan: training max 301%
    2:3 301% is out of range: 0 to 300% [out-of-range]
# Movements
exercise: pattern
    2:3 Expected a pattern after pattern, such as squat [missing-value]
exercise: pattern squatt
    2:11 squatt is no pattern: did you mean squat? [vocabulary]
      → Write squat: pattern squat
exercise: pattern squat, hinge
    2:16 "," does not fit after squat: expected a pattern such as squat [syntax]
exercise: work
    2:3 Expected a kind of work after work, such as strength [missing-value]
exercise: work heavy
    2:8 heavy is no kind of work: write strength, carry, hold, jump, conditioning or mobility [vocabulary]
exercise: position
    2:3 Expected a position after position, such as standing [missing-value]
exercise: position stading
    2:12 stading is no position: did you mean standing? [vocabulary]
      → Write standing: position standing
exercise: trunk
    2:3 Expected resists or moves after trunk, and a direction such as flexion [missing-value]
exercise: trunk resists
    2:3 Expected resists or moves after trunk, and a direction such as flexion [missing-value]
exercise: trunk flexion
    2:9 flexion does not fit after trunk: expected resists or moves, then a direction [syntax]
exercise: trunk resists twisting
    2:17 twisting is no direction: write extension, flexion, rotation or side bend [vocabulary]
exercise: muscles
    2:3 Expected muscles after muscles, such as quadriceps, adductors 1/2 [missing-value]
exercise: muscles glutess
    2:11 glutess is no muscle: did you mean glutes? [vocabulary]
      → Write glutes: muscles glutes
exercise: muscles heart
    2:11 heart is no muscle: write quadriceps, glutes or lats [vocabulary]
exercise: muscles glutes 3/2
    2:18 3/2: the share of an indirect muscle is at most 1, such as 1/2 [out-of-range]
exercise: muscles glutes 1/
    2:11 glutes 1/ is no muscle: did you mean glutes? [vocabulary]
      → Write glutes: muscles glutes
exercise: needs
    2:3 Expected equipment after needs, such as dumbbell, bench [missing-value]
exercise: each
    2:3 Expected each rep moves one, or each rep moves both after each [syntax]
exercise: each rep
    2:8 Expected each rep moves one, or each rep moves both after rep [syntax]
exercise: each rep moves
    2:12 Expected each rep moves one, or each rep moves both after moves [syntax]
exercise: each rep moves two
    2:18 Expected each rep moves one, or each rep moves both after moves, found two [syntax]
exercise: bodyweight
    2:3 Expected a share of body mass after bodyweight, such as 69% [missing-value]
exercise: bodyweight 69 kg
    2:17 Expected a % sign after 69, found kg [syntax]
exercise: bodyweight 101%
    2:3 101% is out of range: 0 to 100% [out-of-range]
exercise: counts
    2:3 Expected contacts after counts [missing-value]
exercise: counts jumps
    2:10 jumps does not fit after counts: expected contacts [syntax]
exercise: also
    2:3 Expected another spelling of the name after also [missing-value]
exercise: easier
    2:3 Expected an easier movement after easier [missing-value]
exercise: harder
    2:3 Expected a harder movement after harder [missing-value]
exercise: setup
    2:3 Expected how to set up after setup [missing-value]
exercise: cue
    2:3 Expected what to think of after cue [missing-value]
exercise: caution
    2:3 Expected what to take care of after caution [missing-value]
exercise: pattern squat / pattern hinge
    3:3 pattern stands here twice: the last one counts [repeated-property]
# Places
place: bars
    2:3 Expected weights after bars, such as 20 kg, 10 kg [missing-value]
place: bars 20
    2:8 Which unit has 20? Write kg or lb behind it, or units kg at the top of the file [missing-unit]
      → Write 20 kg: bars 20 kg
      → Write 20 lb: bars 20 lb
place: bars 1001 kg
    2:8 1001 kg is out of range: 0 to 1 000 kg [out-of-range]
place: bars heavy
    2:8 heavy does not fit after bars: expected weights such as 20 kg, 10 kg [syntax]
place: bars 20 kg @ 10 kg
    2:14 @ does not fit after kg: expected weights such as 20 kg, 10 kg [syntax]
place: bars 2x20 kg
    2:8 2x20 kg: one weight stands here, without a count [implement-count]
place: plates
    2:3 Expected plates after plates, such as 2x20, 4x10 kg [missing-value]
place: plates 20x2, 10x2 kg
    2:10 20x2 says 20 plates. Where the weight stands first, write 2x20, 2x10 kg [plate-count]
      → Write 2x20, 2x10 kg: plates 2x20, 2x10 kg
place: bars 20 kg / plates 20, 10, 5 kg
    3:10 Each of these plates is there once, and a bar takes two of a weight. Where they are pairs, write 2x20, 2x10, 2x5 kg [plate-count]
      → Write 2x20, 2x10, 2x5 kg: plates 2x20, 2x10, 2x5 kg
place: plates 1001x20 kg
    2:10 1001 plates is out of range: 1 to 1 000 plates [out-of-range]
place: plates x20 kg
    2:10 x does not fit after plates: expected plates such as 2x20, 4x10 kg [syntax]
place: collars
    2:3 Expected a weight after collars, such as 2.5 kg [missing-value]
place: dumbbells
    2:3 Expected a range after dumbbells, such as 4-32 by 2 kg [missing-value]
place: dumbbells 4-32 kg
    2:13 Expected the step from one weight to the next, such as 4-32 kg by 2 kg [missing-value]
place: dumbbells 4-32 by 2
    2:13 Which unit has 4-32 by 2? Write kg or lb behind it, or units kg at the top of the file [missing-unit]
      → Write 4-32 by 2 kg: dumbbells 4-32 by 2 kg
      → Write 4-32 by 2 lb: dumbbells 4-32 by 2 lb
place: dumbbells 32-4 by 2 kg
    2:13 A range goes from the lower to the higher weight [range-order]
place: dumbbells 4-32 by 0 kg
    2:13 The step from one weight to the next is above 0 [range-order]
place: dumbbells 4, 7, 8 kg
    2:14 Expected a range such as 4-32 by 2 kg after 4, found "," [syntax]
place: dumbbells 4-
    2:14 Expected a weight such as 20 kg after "-" [syntax]
place: dumbbells 4-32 by
    2:18 Expected a weight such as 20 kg after by [syntax]
place: kettlebells
    2:3 Expected weights after kettlebells, such as 16 kg, 24 kg [missing-value]
place: stacks
    2:3 Expected a name and a range after stacks, such as Cable 5-100 by 5 kg [missing-value]
place: stacks Cable
    2:3 Expected a name and a range after stacks, such as Cable 5-100 by 5 kg [missing-value]
place: has
    2:3 Expected equipment after has, such as bench, mat [missing-value]
# Athletes
athlete: born
    2:3 Expected a year after born, such as 1991 [missing-value]
athlete: born 91
    2:3 91 is no year of birth: write all four digits, such as 1991 [out-of-range]
athlete: born long ago
    2:8 long does not fit after born: expected a year such as 1991 [syntax]
athlete: sex
    2:3 Expected female or male after sex [missing-value]
athlete: sex X
    2:7 X does not fit after sex: expected female or male [syntax]
athlete: units
    2:3 Expected kg or lb after units [missing-value]
athlete: units stone
    2:9 stone does not fit after units: expected kg or lb [syntax]
athlete: units lbs
    2:9 Write lb for lbs [spelling-of-unit]
      → Write lb: units lb
athlete: bodyweight
    2:3 Expected a weight and a day after bodyweight, such as 68.5 kg on 2026-10-01 [missing-value]
athlete: bodyweight 68.5 kg
    2:3 Expected a weight and a day after bodyweight, such as 68.5 kg on 2026-10-01 [missing-value]
athlete: bodyweight 68.5 kg on
    2:3 Expected a weight and a day after bodyweight, such as 68.5 kg on 2026-10-01 [missing-value]
athlete: bodyweight 68.5 kg on Monday
    2:25 Monday does not fit after on: expected a weight and a day such as 68.5 kg on 2026-10-01 [syntax]
athlete: bodyweight 401 kg on 2026-10-01
    2:14 401 kg is out of range: 20 kg to 400 kg [out-of-range]
athlete: max
    2:3 Expected a movement, its load and a day after max, such as Back Squat: 105 kg on 2026-09-28 [missing-value]
athlete: max Back Squat: 105 kg on 9/28
    2:29 9/28 is no date that can be read without doubt: write year-month-day, such as 2026-11-17 [odd-date]
athlete: max Back Squat: 105 kg Monday
    2:26 Monday does not fit after kg: expected a load and a day such as 105 kg on 2026-09-28 [syntax]
athlete: goal
    2:3 Expected a movement and a set after goal, such as Pull-up: 8 @ bw by 2027-06-01 [missing-value]
athlete: goal Pull-up: by 2027-06-01
    2:17 by does not fit after ":": expected a set and a day such as 8 @ bw by 2027-06-01 [syntax]
athlete: retest
    2:3 Expected a movement, two loads and a day after retest, such as Back Squat: 100, 102.5 kg on 2026-09-28 [missing-value]
athlete: retest Back Squat: 100 kg, soon
    2:30 soon does not fit after ",": expected two loads and a day such as 100, 102.5 kg on 2026-09-28 [syntax]
athlete: avoid
    2:3 Expected a pattern or a movement after avoid, such as vertical push [missing-value]
athlete: avoid squat until
    2:3 Expected a date after until, such as 2026-12-15 [missing-value]
athlete: avoid squat until spring
    2:21 spring does not fit after until: expected until a day, or a comma and the reason [syntax]
athlete: away
    2:3 Expected two days after away, such as 2026-12-19 to 2027-01-03 [missing-value]
athlete: away 2027-01-03 to 2026-12-19
    2:3 The first day away comes before the last [range-order]
athlete: away soon
    2:8 soon does not fit after away: expected two days such as 2026-12-19 to 2027-01-03 [syntax]
athlete: screened
    2:3 Expected a date after screened, such as 2026-11-17 [missing-value]
athlete: screened soon
    2:12 soon does not fit after screened: expected a date such as 2026-11-17 [syntax]
# Entries
file: units
    1:1 Expected kg or lb after units [missing-value]
file: units stone
    1:7 stone does not fit after units: expected kg or lb [syntax]
file: units kgs
    1:7 Write kg for kgs [spelling-of-unit]
      → Write kg: units kg
file: exercise
    1:1 Expected a movement's name after exercise [missing-name]
file: place
    1:1 Expected a place's name after place [missing-name]
file: athlete
    1:1 Expected an athlete's name after athlete [missing-name]
file: plan
    1:1 Expected a plan's name after plan [missing-name]
file: Row: 5 @ 20 kg
    1:1 These lines stand before any session: begin with session, a date and an athlete [outside-entry]
file: sesion 2026-11-17 Ivo
    1:1 No entry begins with sesion: did you mean session? Until then its lines count in no total [unknown-entry]
      → Write session: session 2026-11-17 Ivo
file: workout 2026-11-17 Ivo
    1:1 No entry begins with workout: did you mean session? Until then its lines count in no total [unknown-entry]
      → Write session: session 2026-11-17 Ivo
file: athlet Ivo Brundt
    1:1 No entry begins with athlet: did you mean athlete? Until then its lines count in no total [unknown-entry]
      → Write athlete: athlete Ivo Brundt
file: weekly Ivo Brundt
    1:1 No entry begins with weekly: its lines count in no total [unknown-entry]
file: athlete I
    1:9 A name has at least two letters [name-rules]
file: athlete Ivo at Home
    1:9 An athlete's name does not hold the word at: in a session, a place follows it [name-rules]
file: athlete Ivo & Bo
    1:9 An athlete's name does not hold &: in a session it would stand between two athletes [name-rules]
file: athlete Ivo and Bo
    1:9 An athlete's name does not hold and: in a session it would stand between two athletes [name-rules]
file: athlete Ivo, Bo
    1:9 A name has no "," in it [name-rules]
      → Write Ivo Bo: athlete Ivo Bo
file: athlete Ivo Brundt:
    1:9 A name has no ":" in it [name-rules]
      → Write Ivo Brundt: athlete Ivo Brundt
file: exercise rest
    1:10 rest alone is a word of the notation: a name says more, such as rest Walk [name-rules]
file: exercise Test Squat
    1:10 A name does not begin with test: before a movement that word says what its sets are for [name-rules]
file: exercise @
    1:10 A name has no "@" in it [name-rules]
exercise: also Row | Pull
    2:8 A name has no "|" in it [name-rules]
      → Write Row Pull: also Row Pull
file: place Aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa
    1:7 A name has at most 80 letters: Aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa… [name-rules]
# More of what does not go on
session: Row: 30 s left 8 m right
    2:8 30 s left 8 m right: both sides are counted in the same unit [range-order]
session: Row: 3x kg
    2:9 x does not fit after 3: expected sets such as 3x5 @ 85 kg [syntax]
session: Row: 5 @ 20 kg rpe 6-
    2:23 Expected a rating such as rpe 8 after "-" [syntax]
session: Row: kg
    2:8 kg does not fit after ":": expected sets such as 3x5 @ 85 kg [syntax]
session: Row: drop 5
    2:8 drop does not fit after ":": expected sets such as 3x5 @ 85 kg [syntax]
session: lasted 50 |
    2:10 Which unit has 50? Write it behind the number, such as 50 min [missing-unit]
      → Write 50 min: lasted 50 min |
    2:13 Expected a time such as 2:55, or ? after | [syntax]
session: A circuit / time ? |
    3:10 Expected a time such as 2:55, or ? after | [syntax]
session: intervals 6 m
    2:15 Expected a setting such as 4 rounds or rest 1:15 after 6, found m [syntax]
session: rest 1:45, 1 | 2
    2:14 Which unit has 1? Write it behind the number, such as 1 s [missing-unit]
      → Write 1 s: rest 1:45, 1 s | 2
      → Write 1 min: rest 1:45, 1 min | 2
    2:16 | does not fit after 1: expected a rest such as 1:15 [syntax]
session: A circuit, 4 rounds x 2
    2:25 Expected rounds such as 4 rounds or 3 rounds x 2 passes after 2 [syntax]
session: bodyweight sets
    2:14 sets does not fit after bodyweight: expected a weight such as 68.2 kg [syntax]
session: sleep % kg
    2:9 % does not fit after sleep: expected hours such as 7 h [syntax]
session: Net Haul: rest 15 m @ 50 kg
    2:18 m stands for metres: write min for minutes [unclear-time]
      → Write 15 min: Net Haul: rest 15 min @ 50 kg
    2:23 @ does not fit after m: expected sets such as 3x5 @ 85 kg [syntax]
session: lasted 48 n
    2:10 Which unit has 48? Write it behind the number, such as 48 min [missing-unit]
      → Write 48 min: lasted 48 min n
    2:13 n does not fit after 48: expected a time such as 58 min [syntax]
plan: Row: 5 @ rir
    2:12 Expected a number such as rir 2 after rir [syntax]
plan: Row: 5, after 3 x
    2:19 Expected tempo, rest, setting, pain or a step after 3, found x [syntax]
plan: Row: 5, +
    2:11 Expected a step such as +2.5 kg each week after + [syntax]
plan: deload week 6, sets
    2:18 Expected sets 50% or load 90% after sets [syntax]
plan: weeks 6 m
    2:11 m does not fit after 6: expected a number of weeks [syntax]
plan: at,
    2:5 "," does not fit after at: expected a place's name [syntax]
plan: follows Base, Two
    2:15 "," does not fit after Base: expected a plan's name [syntax]
plan: days alternate, 3 a
    2:21 Expected week after a [syntax]
plan: training max band
    2:16 band does not fit after max: expected a share such as training max 90% [syntax]
exercise: work strength, hold
    2:16 "," does not fit after strength: expected a kind of work such as strength [syntax]
exercise: position standing, seated
    2:20 "," does not fit after standing: expected a position such as standing [syntax]
exercise: trunk resists flexion,
    2:24 Expected a name after "," [syntax]
exercise: trunk r kg
    2:9 r does not fit after trunk: expected resists or moves, then a direction [syntax]
exercise: muscles glutes 1/2 1/2
    2:11 glutes 1/2 is no muscle: write quadriceps, glutes or lats [vocabulary]
exercise: muscles glutes | hams
    2:11 glutes | hams is no muscle: write quadriceps, glutes or lats [vocabulary]
exercise: bodyweight heavy
    2:14 heavy does not fit after bodyweight: expected a share of body mass such as 69% [syntax]
exercise: each rep moves one kg
    2:22 kg does not fit after one: expected each rep moves one, or each rep moves both [syntax]
place: collars heavy
    2:11 heavy does not fit after collars: expected a weight such as 2.5 kg [syntax]
place: kettlebells heavy
    2:15 heavy does not fit after kettlebells: expected weights such as 16 kg, 24 kg [syntax]
place: stacks Cable 5-100 by 5 kg, 10
    2:29 "," does not fit after kg: expected a name and a range such as 5-100 by 5 kg [syntax]
place: dumbbells heavy
    2:13 heavy does not fit after dumbbells: expected a range such as 4-32 by 2 kg [syntax]
athlete: born 1991 or so
    2:13 or does not fit after 1991: expected a year such as 1991 [syntax]
file: session 2026-11-17 Ivo, Base week 5 week 6
    1:37 week does not fit after 5: expected a date, an athlete, at a place, then a plan [syntax]
file: session 2026-11-17 Ivo, week 5
    1:25 week does not fit after ",": expected a date, an athlete, at a place, then a plan [syntax]
file: plan Base | Two
    1:6 A name has no "|" in it [name-rules]
      → Write Base Two: plan Base Two
`;
