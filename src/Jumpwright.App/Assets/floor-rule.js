// The rule of roll call, step by step as FloorRule in the program has it (docs/floor-rule.md); a test holds the two against each other.
// turns: station, exercise, start, end (minutes), athletes. needs: athlete, exercise, low, needs_low, only_with, fresh. here: a predicate.
// freshUntil: until when fresh work begins, by the minutes at hand from none to all that were planned.
"use strict";
const floorRule = (turns, needs, here, freshUntil, minutes) => {
  const same = 1e-6, before = (x, y) => x < y ? -1 : x > y ? 1 : 0;
  const order = (x, y) => x.start - y.start || before(x.station, y.station) || before(x.exercise, y.exercise) || before(x.athletes[0], y.athletes[0]);
  // 1 and 2: who is away goes, and what waited moves up by as much as all it waits for allow.
  const made = [];
  for (const plan of [...turns].sort(order)) {
    const athletes = plan.athletes.filter(here), pieces = plan.station.split("+");
    const waits = made.filter(p => p.plan.end <= plan.start + same
      && (p.pieces.some(s => pieces.includes(s)) || p.athletes.some(a => athletes.includes(a))));
    const sooner = waits.length ? Math.max(0, Math.min(...waits.map(p => p.plan.end - p.end))) : 0;
    const start = plan.start - sooner;
    made.push({ ...plan, plan, pieces, athletes, start, end: athletes.length ? plan.end - sooner : start });
  }
  const left = made.filter(t => t.athletes.length);
  // 3: what would not be over in time is not begun. 4: nothing without what must go before it.
  const planned = freshUntil.length - 1, fresh = freshUntil[Math.min(Math.max(minutes || planned, 0), planned)];
  const until = minutes && minutes < planned ? minutes : Infinity, cuts = [];
  for (const athlete of [...new Set(needs.map(n => n.athlete))].filter(here)) {
    const all = needs.filter(n => n.athlete === athlete);
    const of = n => left.filter(t => t.exercise === n.exercise && t.athletes.includes(athlete));
    const late = n => of(n).some(t => t.end > until + same) ? "NotOverInTime"
      : n.fresh && of(n).length && Math.min(...of(n).map(t => t.start)) > fresh + same ? "NotFreshByThen" : null;
    let stay = all.filter(n => !late(n));
    for (const n of all.filter(late)) cuts.push({ athlete, exercise: n.exercise, reason: late(n) });
    const low = stay.some(n => n.low), has = (list, id) => list.some(n => n.exercise === id);
    for (;;) {
      const lost = stay.find(n => (n.needs_low && !low) || (n.only_with && has(all, n.only_with) && !has(stay, n.only_with)));
      if (!lost) break;
      stay = stay.filter(n => n !== lost);
      cuts.push({ athlete, exercise: lost.exercise, reason: lost.needs_low && !low ? "NoLowWorkBefore" : "OnlyWithItsPartner" });
    }
  }
  const gone = new Set(cuts.map(c => c.athlete + "\n" + c.exercise));
  return {
    cuts,
    turns: left.map(t => ({ ...t, athletes: t.athletes.filter(a => !gone.has(a + "\n" + t.exercise)) }))
      .filter(t => t.athletes.length).sort(order),
  };
};
