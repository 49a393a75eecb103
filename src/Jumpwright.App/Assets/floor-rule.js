// The rule of roll call, step by step as FloorRule in the program has it (docs/floor-rule.md); a test holds the two against each other.
// turns: station, exercise, start, end (minutes), athletes. needs: athlete, exercise, low, needs_low, only_with, fresh, kit (id, count).
// here: a predicate. freshUntil: until when fresh work begins, by the minutes at hand from none to all that were planned.
// kit: how many of a kind are here today, by id; what is not named is as planned. changeOver: minutes between two exercises, at the least.
"use strict";
const floorRule = (turns, needs, here, freshUntil, minutes, kit = {}, changeOver = Infinity) => {
  const same = 1e-6, before = (x, y) => x < y ? -1 : x > y ? 1 : 0;
  const order = (x, y) => x.start - y.start || before(x.station, y.station) || before(x.exercise, y.exercise) || before(x.athletes[0], y.athletes[0]);
  const planned = freshUntil.length - 1, fresh = freshUntil[Math.min(Math.max(minutes ?? planned, 0), planned)];
  const kindOf = piece => { const read = /^(.+)-(\d+)$/.exec(piece); return read ? { kind: read[1], number: Number(read[2]) } : { kind: piece, number: 0 }; };
  const countOf = kind => Object.hasOwn(kit, kind) ? Math.max(0, kit[kind]) : Infinity;
  const misses = piece => kindOf(piece).number > countOf(kindOf(piece).kind);
  const isShort = turns.some(t => t.station.split("+").some(misses));
  const until = minutes !== null && minutes !== undefined && minutes < planned ? minutes : isShort ? planned : Infinity;

  // What falls for a reason of its own, and then what needs it.
  const cutsOf = (athlete, all, fallen) => {
    const cuts = [];
    let stay = all.filter(n => !fallen(n));
    for (const n of all.filter(fallen)) cuts.push({ athlete, exercise: n.exercise, reason: fallen(n) });
    const low = stay.some(n => n.low), has = (list, id) => list.some(n => n.exercise === id);
    for (;;) {
      const lost = stay.find(n => (n.needs_low && !low) || (n.only_with && has(all, n.only_with) && !has(stay, n.only_with)));
      if (!lost) break;
      stay = stay.filter(n => n !== lost);
      cuts.push({ athlete, exercise: lost.exercise, reason: lost.needs_low && !low ? "NoLowWorkBefore" : "OnlyWithItsPartner" });
    }
    return cuts;
  };
  const keyOf = (athlete, exercise) => athlete + "\n" + exercise;

  // 1: who is away goes, and so does what there is too little kit for, with what needs it.
  const missing = n => (n.kit || []).some(k => countOf(k.id) < k.count) ? "KitMissing" : null;
  const athletes = [...new Set(needs.map(n => n.athlete))].filter(here)
    .map(id => ({ id, needs: needs.filter(n => n.athlete === id) }))
    .map(a => ({ ...a, missing: cutsOf(a.id, a.needs, missing) }));
  const gone = new Set(athletes.flatMap(a => a.missing).map(c => keyOf(c.athlete, c.exercise)));
  const left = needs.filter(n => !gone.has(keyOf(n.athlete, n.exercise)));

  // 2: what waited moves up by as much as all it waits for allow; what has no piece of kit waits for another.
  const made = [], freeFrom = new Map(), notBegun = new Map(), sorted = [...turns].sort(order);
  const bouts = new Map(), last = new Map();
  if (isShort) {
    // Turns that belong together: those of a pair, one after the other at one station; any other turn by itself.
    for (const turn of sorted) {
      const only = turn.athletes.length === 1 ? turn.athletes[0] : null, was = only === null ? undefined : last.get(only);
      const goesOn = was && was.athletes.length === 1 && was.station === turn.station && was.exercise !== turn.exercise
        && left.some(n => n.athlete === only && ((n.exercise === was.exercise && n.only_with === turn.exercise)
          || (n.exercise === turn.exercise && n.only_with === was.exercise)));
      const bout = goesOn ? bouts.get(was) : { exercises: [], end: 0, pieces: undefined, later: 0 };
      bout.exercises.push(turn.exercise);
      bout.end = Math.max(bout.end, turn.end);
      bouts.set(turn, bout);
      for (const a of turn.athletes) last.set(a, turn);
    }
  }
  // For a piece that is missing the one that is free first; null where there are too few.
  const piecesOf = (stations, its, start) => {
    if (!stations.some(misses)) return stations;
    const pieces = stations.filter(p => !misses(p));
    for (const lost of stations.filter(misses)) {
      const { kind } = kindOf(lost);
      // A partner that is left out leaves its kit behind.
      if (!its.some(n => (n.kit || []).some(k => k.id === kind))) continue;
      let other = null;
      for (let n = 1; n <= countOf(kind); n++) {
        const piece = `${kind}-${n}`, from = p => Math.max(start, freeFrom.get(p) || 0);
        if (!pieces.includes(piece) && (other === null || from(piece) < from(other))) other = piece;
      }
      if (other === null) return null;
      pieces.push(other);
    }
    return pieces.sort(before);
  };
  for (const plan of sorted) {
    const who = plan.athletes.filter(a => here(a) && !gone.has(keyOf(a, plan.exercise)) && !notBegun.has(keyOf(a, plan.exercise)));
    const stations = plan.station.split("+");
    const waits = made.filter(p => p.plan.end <= plan.start + same);
    const shared = waits.filter(p => p.stations.some(s => stations.includes(s)) || p.who.some(a => who.includes(a)));
    const up = shared.length ? Math.max(0, Math.min(...shared.map(p => p.plan.end - p.end))) : 0;
    const asPlanned = athletes => ({
      ...plan, plan, stations, who, athletes, start: plan.start - up, end: athletes.length ? plan.end - up : plan.start - up,
    });
    if (!isShort || !who.length) { made.push(asPlanned(who)); continue; }
    const bout = bouts.get(plan);
    if (bout.pieces === undefined || bout.pieces === null) {
      const its = who.flatMap(a => left.filter(n => n.athlete === a && bout.exercises.includes(n.exercise)));
      const rested = Math.max(0, ...waits.filter(p => p.who.some(a => who.includes(a)))
        .map(p => p.end + Math.min(plan.start - p.plan.end, changeOver)));
      let start = Math.max(plan.start - up, rested);
      bout.pieces = piecesOf(stations, its, start);
      start = Math.max(start, ...(bout.pieces || stations).map(p => freeFrom.get(p) || 0));
      bout.later = start - plan.start;
      const end = bout.end + bout.later;
      const late = bout.pieces === null ? "KitMissing" : end > until + same ? "NotOverInTime"
        : its.some(n => n.fresh) && start > fresh + same ? "NotFreshByThen" : null;
      if (late) {
        for (const e of bout.exercises) for (const a of who) if (!notBegun.has(keyOf(a, e))) notBegun.set(keyOf(a, e), late);
        made.push(asPlanned([]));
        continue;
      }
      for (const p of bout.pieces) if (kindOf(p).number > 0) freeFrom.set(p, end);
    }
    made.push({
      ...plan, plan, stations, who, athletes: who, station: bout.pieces.join("+") || "floor",
      start: plan.start + bout.later, end: plan.end + bout.later,
    });
  }

  // 3: what would not be over in time is not begun. 4: nothing without what must go before it.
  const stands = made.filter(t => t.athletes.length);
  const late = (athlete, n) => {
    const of = stands.filter(t => t.exercise === n.exercise && t.athletes.includes(athlete));
    return notBegun.get(keyOf(athlete, n.exercise)) || (of.some(t => t.end > until + same) ? "NotOverInTime"
      : n.fresh && of.length && Math.min(...of.map(t => t.start)) > fresh + same ? "NotFreshByThen" : null);
  };
  const cuts = athletes.flatMap(a => [
    ...a.missing, ...cutsOf(a.id, a.needs.filter(n => !gone.has(keyOf(a.id, n.exercise))), n => late(a.id, n)),
  ]);
  const out = new Set(cuts.map(c => keyOf(c.athlete, c.exercise)));
  return {
    cuts,
    turns: stands.map(t => ({ ...t, athletes: t.athletes.filter(a => !out.has(keyOf(a, t.exercise))) }))
      .filter(t => t.athletes.length).sort(order),
  };
};
