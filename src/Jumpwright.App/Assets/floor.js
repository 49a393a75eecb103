// The floor view. Everything is written into this tablet's own database first, under an id made here, and handed to the program
// later; the program keeps an id once, so that handing in twice does no harm. Nothing is ever deleted here.
// Its words come from floorWords (/floor/words.js), which the program makes of its text book in the language of the page.
"use strict";
(() => {
  const byId = id => document.getElementById(id);

  // A text with its gaps filled: as a string, or as parts, in which what the catalogue and the cards say is marked with its language.
  const t = (key, ...filled) => floorWords[key].replace(/\{(\d)\}/g, (_, i) => typeof filled[i] === "number" ? written(filled[i]) : filled[i]);
  // A number as the page's language writes it; the program has the same rule (Numerals).
  const written = (n, digits) => {
    const plain = digits === undefined ? String(n) : n.toFixed(digits);
    return document.documentElement.lang === "de" ? plain.replace(".", ",") : plain;
  };
  const say = (key, ...filled) => floorWords[key].split(/(\{\d\})/).flatMap(p => /^\{\d\}$/.test(p) ? filled[p[1]] : p);
  // What a card says comes with its language; a session kept before it did has English strings.
  const en = said => said?.en === undefined ? { en: said } : said;
  // An exercise's name in the language it came in; a session kept before names had one has English ones.
  const named = x => ({ en: x.name, lang: x.lang });
  const within = x => x.lang && x.lang !== "en" ? x.name : x.name.toLowerCase();
  const plain = parts => [parts].flat().map(p => p.en ?? p).join("");
  const fill = (e, parts) => e.replaceChildren(...[parts].flat().map(p => p.en === undefined ? String(p) : el("span", p.en, { lang: p.lang || "en" })));
  const el = (name, text, more = {}) => {
    const e = document.createElement(name);
    if (Array.isArray(text) || (text && text.en !== undefined)) fill(e, text);
    else if (text !== undefined && text !== null) e.textContent = text;
    for (const [k, v] of Object.entries(more)) {
      if (k.startsWith("on")) e.addEventListener(k.slice(2), v);
      else if (v === true) e.setAttribute(k, "");
      else if (v !== false && v !== null && v !== undefined) e.setAttribute(k, v);
    }
    return e;
  };

  // This tablet's database.
  const opened = new Promise((done, fail) => {
    const ask = indexedDB.open("jumpwright-floor", 1);
    ask.onupgradeneeded = () => {
      ask.result.createObjectStore("entries", { keyPath: "id" }).createIndex("session", "session");
      ask.result.createObjectStore("sessions", { keyPath: "id" });
      ask.result.createObjectStore("notes", { keyPath: "key" });
    };
    ask.onsuccess = () => done(ask.result);
    ask.onerror = () => fail(ask.error);
  });
  const run = async (store, mode, work) => {
    const db = await opened;
    return new Promise((done, fail) => {
      const t = db.transaction(store, mode, { durability: "strict" });
      const ask = work(t.objectStore(store));
      t.oncomplete = () => done(ask && ask.result);
      t.onerror = t.onabort = () => fail(t.error);
    });
  };
  const put = (store, value) => run(store, "readwrite", s => s.put(value));
  const get = (store, key) => run(store, "readonly", s => s.get(key));
  const all = store => run(store, "readonly", s => s.getAll());

  let plan = null, entries = [], device = "", began = null, openAthlete = null, reachable = false, sessions = [];
  const rests = new Map();

  // The rule for two words about one set: the later counts; of two at one time the greater id. The program has the same rule.
  const later = (a, b) => a.made_at < b.made_at || (a.made_at === b.made_at && a.id < b.id) ? b : a;
  const setKey = e => [e.athlete, e.data.exercise, e.data.set, e.data.test || ""].join("\n");
  const setsNow = () => {
    const last = new Map();
    for (const e of entries) if (e.kind === "set") last.set(setKey(e), last.has(setKey(e)) ? later(last.get(setKey(e)), e) : e);
    return last;
  };
  const doneOf = (athlete, exercise) => [...setsNow().values()]
    .filter(e => e.athlete === athlete && e.data.exercise === exercise && !e.data.test && !e.data.undone);
  const trialsOf = (athlete, test) => [...setsNow().values()]
    .filter(e => e.athlete === athlete && e.data.test === test.question && e.data.exercise === test.exercise && !e.data.undone)
    .filter(e => e.data.reps > 0 || !e.data.broken_off)
    .sort((x, y) => x.data.set - y.data.set);
  // What the roll said last: here, away, or null where nobody called it yet. Until then the plan counts them in.
  const called = athlete => {
    let last = null;
    for (const e of entries) if (e.kind === "here" && e.athlete === athlete) last = last ? later(last, e) : e;
    return last ? last.data.here : null;
  };
  const isHere = athlete => called(athlete) ?? true;
  // The kit of today: of each kind the latest word, where it is less than planned.
  const kitToday = () => {
    const last = new Map(), less = {};
    for (const e of entries) if (e.kind === "kit") last.set(e.data.kit, last.has(e.data.kit) ? later(last.get(e.data.kit), e) : e);
    for (const k of plan.kit || []) {
      const said = last.get(k.id);
      if (said && said.data.count < k.count) less[k.id] = Math.max(0, said.data.count);
    }
    return less;
  };
  // The minutes of today: the latest word, where it is less than planned. All tablets and the program have the same rule.
  const minutesToday = () => {
    let last = null;
    for (const e of entries) if (e.kind === "minutes") last = last ? later(last, e) : e;
    return last && last.data.minutes < plan.minutes ? Math.max(1, last.data.minutes) : null;
  };
  // A pain that was tapped by mistake: taken back by a person with a name, after it and on its own day. The program has the same rule
  // (WithdrawnPain); both entries stay.
  const dayOf = at => new Date(at).toLocaleDateString("en-CA", plan.zone ? { timeZone: plan.zone } : {});
  const takenBack = () => {
    const pains = new Map(entries.filter(e => e.kind === "pain").map(e => [e.id, e])), back = new Map();
    for (const e of entries) {
      const pain = e.kind === "pain-withdrawn" && pains.get(e.data.pain);
      if (pain && e.data.by && e.data.by.trim() && e.athlete === pain.athlete && e.session === pain.session
        && e.made_at >= pain.made_at && dayOf(e.made_at) === dayOf(pain.made_at)) back.set(pain.id, e);
    }
    return back;
  };
  const painsSaid = () => { const back = takenBack(); return entries.filter(e => e.kind === "pain" && !back.has(e.id)); };
  const worstPain = (athlete, exercise) => Math.max(-1, ...painsSaid()
    .filter(e => e.athlete === athlete && (exercise === undefined || e.data.exercise === exercise))
    .map(e => e.data.score ?? -1));
  // Pain in a new place: at that exercise or at rest; without an exercise, wherever it was said.
  const newPlace = (athlete, exercise) => painsSaid().some(e => e.athlete === athlete && e.data.site_new
    && (exercise === undefined || e.data.exercise === exercise || !e.data.exercise));

  // Where a pain was, said after how bad it was: of several words about one pain the latest counts, but where bone may be what hurts no tap takes
  // that away: the last such place stays. The program has the same rule (PainPlaces).
  const placesSaid = pain => entries.filter(e => e.kind === "pain-place" && e.data.pain === pain.id && e.athlete === pain.athlete && e.session === pain.session);
  const lastOf = said => said.length ? said.reduce((a, b) => later(a, b)).data : null;
  const boneUnnamed = (athlete, site) => {
    const known = siteOf({ site }) || sore(athlete).find(s => s.site === site);
    return known ? known.bone_unnamed ?? known.bone : true;
  };
  const sorePlace = pain => lastOf(placesSaid(pain).filter(e => boneUnnamed(pain.athlete, e.data.site))) || lastOf(placesSaid(pain))
    || (pain.data.site ? pain.data : null);
  const sore = athlete => (plan.athletes.find(a => a.id === athlete) || {}).sore || [];
  // Of that very side: the rules of safety, too, take a tissue named for one place and side for no other.
  const soreAt = (athlete, place) => sore(athlete).find(s => s.site === place.site && (s.side ?? null) === (place.side ?? null));
  const siteOf = place => (plan.places || []).find(p => p.site === place.site);
  const ofSide = { left: name => t("side.left", name), right: name => t("side.right", name), both: name => t("side.both", name) };
  const sideWord = { left: t("side.left.only"), right: t("side.right.only"), both: t("side.both.only") };
  const placeNamed = (athlete, place) => {
    const name = (siteOf(place) || sore(athlete).find(s => s.site === place.site) || { name: place.site }).name;
    return place.side ? ofSide[place.side](name) : name;
  };
  // Where it may be bone no number goes on; a place that nobody knows may be one.
  const mayBeBone = (athlete, place) => (soreAt(athlete, place) || siteOf(place) || { bone: true }).bone;
  const hurts = e => e.data.score === null || e.data.score > 0;
  const atBone = pain => hurts(pain) && Boolean(sorePlace(pain)) && mayBeBone(pain.athlete, sorePlace(pain));
  const bonePain = athlete => painsSaid().filter(e => e.athlete === athlete && atBone(e)).map(sorePlace)[0];

  // Pain above which everything stops, wherever it was said: no countdown, no set, no test and no turn is offered any more today.
  // For whom any pain counts, one who may have a bone that hurts, that is 0.
  const stopAbove = athlete => (plan.athletes.find(a => a.id === athlete) || {}).stop_above ?? plan.stop_above;
  const tooMuch = athlete => worstPain(athlete) > stopAbove(athlete);
  const stopped = athlete => tooMuch(athlete) || Boolean(bonePain(athlete));
  const itemOf = (athlete, exercise) => (plan.athletes.find(a => a.id === athlete) || { items: [] }).items.find(i => i.exercise === exercise);
  const closed = (athlete, exercise) => {
    const item = itemOf(athlete, exercise);
    return stopped(athlete) || Boolean(item && stopOf({ id: athlete }, item));
  };
  // The set that pain stopped and of which nobody said how many reps were done: its number, or null. The program has the same rule
  // (BrokenOff) and takes it as done in full until somebody says.
  const workOf = (item, test) => ({
    sets: test ? item.trials : item.sets, contacts_per_set: test ? item.contacts_per_trial : item.contacts_per_set,
    drop_height_m: item.drop_height_m ?? null, stops_above: test ? item.stop.pain_above : item.stop.pain_during_above, test: test || null,
  });
  const brokenOff = (a, item, test) => {
    const stops = painsSaid().some(e => e.athlete === a.id && e.data.when === "during" && e.data.exercise === item.exercise
      && ((e.data.work || {}).test || null) === (test || null)
      && (e.data.site_new || e.data.score > ((e.data.work || {}).stops_above ?? 0)
        || atBone(e)));
    if (!stops) return null;
    const sets = [...setsNow().values()].filter(e => e.athlete === a.id && e.data.exercise === item.exercise
      && (e.data.test || null) === (test || null) && !e.data.undone);
    const last = sets.reduce((x, y) => !x || y.data.set > x.data.set ? y : x, null);
    return !last ? 1 : last.data.broken_off || sets.length >= (test ? item.trials : item.sets) ? null : last.data.set + 1;
  };

  // A test waits for the same: whoever does only what stands for sore days, or less, is not tested.
  const untested = (a, test) => stopped(a.id) || worstPain(a.id) > Math.min(test.stop.pain_above, stopAbove(a.id));

  const log = async (kind, athlete, data) => {
    const entry = {
      id: crypto.randomUUID(), kind, athlete, session: plan.id, made_at: new Date().toISOString(), who: device || "tablet",
      data, sent: 0,
    };
    await put("entries", entry);
    entries.push(entry);
    draw();
    send();
  };

  // Handing in: a few at a time, until all are; what is answered is marked, what is refused stays and says so.
  let sending = null;
  const send = () => sending ||= (async () => {
    try {
      for (;;) {
        const waiting = (await all("entries")).filter(e => !e.sent).slice(0, 40);
        if (waiting.length === 0) break;
        const answer = await fetch("/floor/log", {
          method: "POST", headers: { "Content-Type": "application/json" },
          body: JSON.stringify({ entries: waiting.map(({ sent, trouble, ...e }) => e) }),
        });
        if (!answer.ok) throw new Error(String(answer.status));
        const told = await answer.json();
        const kept = new Set([...told.added, ...told.known]);
        const trouble = new Map([
          ...told.different.map(id => [id, say("not-taken.other")]), ...told.refused.map(r => [r.id, r.why]),
        ]);
        let moved = 0;
        for (const e of waiting) {
          if (!kept.has(e.id) && !trouble.has(e.id)) continue;
          e.sent = 1;
          if (trouble.has(e.id)) e.trouble = trouble.get(e.id);
          await put("entries", e);
          const mine = entries.find(x => x.id === e.id);
          if (mine) Object.assign(mine, { sent: 1, trouble: e.trouble });
          moved++;
        }
        reachable = true;
        if (moved === 0) break;
      }
      await hear();
    } catch {
      reachable = false;
    }
    sending = null;
    tell();
  })();

  // What other tablets logged.
  const hear = async () => {
    if (!plan) return;
    const answer = await fetch("/floor/sessions/" + encodeURIComponent(plan.id) + "/log");
    if (!answer.ok) return;
    const known = new Set(entries.map(e => e.id));
    let fresh = false;
    for (const e of (await answer.json()).entries) {
      if (known.has(e.id)) continue;
      e.sent = 1;
      await put("entries", e);
      entries.push(e);
      fresh = true;
    }
    reachable = true;
    if (fresh) draw();
  };

  const tell = async () => {
    const here = await all("entries");
    const waiting = here.filter(e => !e.sent).length, trouble = here.filter(e => e.trouble);
    const state = [
      plan ? null : t("none"),
      waiting === 0 ? t("handed-in") : waiting === 1 ? t("waiting.one") : t("waiting.many", waiting),
      reachable ? null : t("unreachable"),
      trouble.length ? say("not-taken", trouble.length, en(trouble[0].trouble)) : null,
    ].filter(Boolean).flatMap((sentence, i) => i ? [" ", sentence].flat() : sentence);
    if (byId("state").textContent !== plain(state)) fill(byId("state"), state);
    document.body.dataset.waiting = waiting;
    document.body.dataset.kept = here.length;
    document.body.dataset.reachable = reachable;
  };

  // Stop rules that speak up.
  const alarms = () => {
    const out = [];
    if (!plan) return out;
    for (const a of plan.athletes) {
      if (stopped(a.id)) {
        out.push(tooMuch(a.id) ? say("alarm.all", a.name, worstPain(a.id), stopAbove(a.id), en(plan.stop_at_once))
          : say("alarm.bone", a.name, placeNamed(a.id, bonePain(a.id)), en(plan.stop_at_once)));
        continue;
      }
      for (const item of a.items) {
        const why = stopOf(a, item);
        if (why && !carried(a, item)) out.push(say("alarm.item", a.name, named(item), why));
      }
      if (a.items.some(item => carried(a, item)))
        out.push(newPlace(a.id) ? t("alarm.new-place", a.name) : t("alarm.sore", a.name, worstPain(a.id)));
      for (const test of a.tests || []) {
        const why = testStop(a, test);
        if (why) out.push(say("alarm.test", a.name, named(test), why));
      }
    }
    return out;
  };
  // What hurt in one exercise counts for each: the card leaves of every exercise what stands instead, and where it hurts nobody may have asked.
  const carried = (a, item) => Math.max(worstPain(a.id, item.exercise), worstPain(a.id, null)) <= item.stop.pain_during_above
    && !newPlace(a.id, item.exercise) && (worstPain(a.id) > item.stop.pain_during_above || newPlace(a.id));
  const stopOf = (a, item) => {
    const faults = doneOf(a.id, item.exercise).reduce((sum, e) => sum + (e.data.faults || 0), 0);
    const pain = worstPain(a.id);
    if (pain > item.stop.pain_during_above) return [t("pain-was", pain, item.stop.pain_during_above), " ",
      stopped(a.id) ? t("no-more") : say("instead", en(item.if_sore))].flat();
    if (item.stop.pain_site_new && newPlace(a.id)) return t("new-place");
    if (item.stop.landing_faults !== null && faults >= item.stop.landing_faults) return t("faults", faults);
    return null;
  };

  // The stop rule of a proposed test. The program has the same rule (TestStop.After) and says it again on the page Done: faults and
  // pain stop at once; contact and height are judged by the mean of the trials so far, since one trial alone scatters.
  const testStop = (a, test) => {
    const rule = test.stop, trials = trialsOf(a.id, test), pain = worstPain(a.id, test.exercise);
    if (pain > rule.pain_above) return t("test.pain-was", pain, rule.pain_above);
    if (rule.pain_site_new && newPlace(a.id)) return t("test.new-place");
    if (trials.length === 0) return null;
    const faults = trials.reduce((sum, e) => sum + (e.data.faults || 0), 0);
    if (rule.landing_faults !== null && faults >= rule.landing_faults)
      return faults === 1 ? t("test.faults.one") : t("test.faults.many", faults);
    const mean = list => list.reduce((sum, v) => sum + v, 0) / list.length;
    const measured = key => trials.map(e => e.data[key]).filter(v => typeof v === "number");
    const contacts = measured("contact_time_s"), heights = measured("height_m");
    if (rule.contact_above_s !== null && contacts.length && mean(contacts) > rule.contact_above_s + 1e-9)
      return t("test.contact", Math.round(1000 * mean(contacts)), Math.round(1000 * rule.contact_above_s));
    const from = rule.height_from_m !== null ? rule.height_from_m : heights.length > 1 ? heights[0] : null;
    if (rule.height_loss_pct !== null && heights.length && from !== null && mean(heights) < from * (1 - rule.height_loss_pct / 100) - 1e-9)
      return t("test.height", written(100 * from, 1), written(100 * mean(heights), 1), rule.height_loss_pct);
    return null;
  };

  // The rotation made anew for those who are here, by the rule that the program has too.
  const rotation = () => {
    // A session kept before the rule came with it has no needs: its turns still move, and all that is late goes.
    const needs = plan.athletes.flatMap(a => a.items.map(i => ({ athlete: a.id, low: false, needs_low: false, ...i.needs, exercise: i.exercise })));
    const turns = plan.rotation.map(r => ({ exercise: r.name, ...r }));
    const { turns: left, cuts } = floorRule(
      turns, needs, isHere, plan.fresh_until || Array(plan.minutes + 1).fill(Infinity), minutesToday(), kitToday(), plan.change_over);
    const itemName = c => (plan.athletes.find(a => a.id === c.athlete).items.find(i => i.exercise === c.exercise) || { name: c.exercise });
    fill(byId("cut"), cuts.length === 0 ? [] : say("cut", cuts.flatMap((c, i) =>
      [i ? "; " : "", nameOf(c.athlete), ", ", named(itemName(c)), ` (${t("cut." + c.reason, minutesToday() || plan.minutes)})`])));
    // Whoever is stopped stands in no turn any more; the others keep their times, since it happens in the middle of them.
    return left.map(r => ({ ...r, athletes: r.athletes.filter(a => !closed(a, r.exercise)) })).filter(r => r.athletes.length);
  };

  // How much, how high or heavy; a session kept before these came together has them apart.
  const doseOf = item => item.dose.en === undefined ? en([item.dose, item.height].filter(Boolean).join(", ")) : item.dose;

  // Who does how much: names that do the same stand together before it.
  const dosesOf = turn => {
    const groups = new Map();
    for (const a of turn.athletes) {
      const item = itemOf(a, turn.exercise), dose = item ? doseOf(item) : en("");
      groups.set(dose.en, { dose, names: [...(groups.get(dose.en)?.names || []), nameOf(a)] });
    }
    return [...groups.values()].flatMap(({ dose, names }, i) => [i ? "; " : "", names.join(", "), ...(dose.en ? [": ", dose] : [])]);
  };

  const clock = s => `${Math.floor(s / 60)}:${String(Math.floor(s % 60)).padStart(2, "0")}`;
  const nameOf = id => (plan.athletes.find(a => a.id === id) || { name: id }).name;
  // Where a turn is: as planned, or at another piece where kit is short. A session kept before places had words has only their ids.
  const placeOf = r => r.station === r.plan.station && r.place ? r.place : r.station.split("+").map(piece => {
    const kit = (plan.kit || []).find(k => piece.startsWith(k.id + "-") && /^\d+$/.test(piece.slice(k.id.length + 1)));
    return kit ? `${kit.place} ${piece.slice(kit.id.length + 1)}` : piece.replace(/-/g, " ");
  }).join(` ${plan.and || "+"} `);
  // A minute as the pages write it.
  const minuteOf = m => Math.round(100 * m) / 100;
  const minute = () => began ? (Date.now() - began) / 60000 : null;

  // How much kit is here: fewer only. A session kept before it came with its kit has no fields for it.
  const drawKit = () => {
    const less = kitToday(), kit = plan.kit || [];
    byId("kit").hidden = kit.length === 0;
    const said = kit.filter(k => k.id in less).map(k => t("kit.less", k.place, less[k.id], k.count)).join("; ");
    byId("kit-said").textContent = said ? t("kit.today", said) : t("kit.as-planned");
    const fields = byId("kit-fields");
    if (fields.dataset.of !== plan.id) {
      fields.dataset.of = plan.id;
      fields.replaceChildren(...kit.map(k => {
        const label = el("label", t("kit.of", k.place, k.count) + " ");
        label.append(el("input", null, {
          type: "number", min: "0", max: k.count, step: "1", inputmode: "numeric", "data-kit": k.id,
          onchange: e => {
            const count = e.target.value === "" ? k.count : Math.min(k.count, Math.max(0, Math.round(Number(e.target.value)) || 0));
            e.target.value = count;
            log("kit", null, { kit: k.id, count });
          },
        }));
        return label;
      }));
    }
    for (const k of kit) {
      const field = fields.querySelector(`[data-kit="${CSS.escape(k.id)}"]`);
      if (field !== document.activeElement) field.value = less[k.id] ?? k.count;
    }
  };

  const drawMinutes = () => {
    byId("minutes").max = plan.minutes;
    if (byId("minutes") !== document.activeElement) byId("minutes").value = minutesToday() || plan.minutes;
  };

  let laterOpen = false;
  const drawWhere = () => {
    drawKit();
    drawMinutes();
    const place = byId("where");
    place.replaceChildren();
    const rows = rotation(), now = minute();
    byId("begin").textContent = began ? t("begin.anew", Math.floor(now)) : t("begin");
    if (rows.length === 0) { place.append(el("p", t("nobody"))); return; }
    // Now and the next ten minutes; what comes later is folded.
    const soon = el("ol", null, { class: "dated where" }), later = el("ol", null, { class: "dated where" });
    for (const r of rows) {
      const on = now !== null && now >= r.start && now < r.end;
      if (now !== null && now >= r.end) continue;
      const row = el("li", null, on ? { class: "now" } : {});
      const what = el("div");
      what.append(
        el("p", [named(r), `, ${placeOf(r)}`], { class: "name" }), el("p", dosesOf(r)));
      row.append(
        el("span", t(on ? "from-to.now" : "from-to", minuteOf(r.start), minuteOf(r.end)), { class: "number" }), what);
      (r.start < (now || 0) + 10 ? soon : later).append(row);
    }
    if (soon.children.length + later.children.length === 0) { place.append(el("p", t("over"))); return; }
    place.append(soon);
    if (later.children.length) {
      const fold = el("details", null, laterOpen ? { open: true } : {});
      fold.addEventListener("toggle", () => { laterOpen = fold.open; });
      fold.append(el("summary", t("later", later.children.length)), later);
      place.append(fold);
    }
  };

  const drawRoll = () => {
    const roll = byId("roll"), focus = document.activeElement && document.activeElement.dataset && document.activeElement.dataset.key;
    roll.replaceChildren();
    for (const a of plan.athletes) {
      const row = el("li"), left = el("div"), right = el("div");
      const here = called(a.id), shown = openAthlete === a.id;
      left.append(el("p", a.name, { class: "name" }));
      left.append(el("button", here === null ? "? " + t("uncalled") : (here ? "✓ " : "– ") + t(here ? "here" : "away"), {
        type: "button", "aria-pressed": here === null ? "mixed" : String(here), "aria-label": here === null ? t("uncalled.of", a.name) : t(here ? "here.of" : "away.of", a.name), "data-key": "here " + a.id,
        onclick: () => log("here", a.id, { here: called(a.id) !== true }),
      }));
      if (a.nothing) {
        const nothing = el("p", a.nothing + " ");
        // A session kept before it knew its cards has no link to them.
        if (a.card) nothing.append(el("a", t("card"), { href: a.card, "aria-label": t("card.of", a.name) }));
        right.append(nothing);
        const did = doneHere(a);
        if (did.length) right.append(el("p", say("done.of", did.flatMap((part, i) => i ? ["; ", ...part] : part))));
        if (stopped(a.id)) right.append(closedLine(a));
        else if (a.tests && a.tests.length) right.append(el("p", t("test.may")));
        if (a.tests && a.tests.length) {
          right.append(opener(a, shown));
          if (shown) right.append(work(a));
        }
      } else {
        const total = a.items.reduce((n, i) => n + i.sets, 0);
        const done = a.items.reduce((n, i) => n + doneOf(a.id, i.exercise).filter(e => !e.data.broken_off).length, 0);
        right.append(el("p", t("done", done, total), { class: "done" }));
        // The plan keeps to what rules allow; more than it is said at once, and not only on the page Done.
        const planned = a.items.reduce((n, i) => n + i.sets * i.contacts_per_set, 0);
        const contacts = a.items.reduce((n, i) => n + doneOf(a.id, i.exercise).reduce((m, e) => m + (e.data.contacts || 0), 0), 0);
        if (contacts > planned) right.append(el("p", t("more-than-planned", contacts, planned), { class: "asking" }));
        right.append(stopped(a.id) ? closedLine(a) : el("p", restOf(a.id), { class: "rest", "data-rest": a.id }));
        right.append(opener(a, shown));
        if (shown) right.append(work(a));
      }
      row.append(left, right);
      roll.append(row);
    }
    if (focus) { const again = document.querySelector(`[data-key="${CSS.escape(focus)}"]`); if (again) again.focus({ preventScroll: true }); }
  };

  // What was logged of a session in which nothing is planned any more: made anew, it doesn't lose what was done.
  const doneHere = a => {
    const by = new Map();
    for (const e of setsNow().values()) {
      if (e.athlete !== a.id || e.data.undone || e.data.test) continue;
      const sum = by.get(e.data.exercise) || { sets: 0, contacts: 0 };
      by.set(e.data.exercise, { sets: sum.sets + 1, contacts: sum.contacts + e.data.contacts });
    }
    const called = id => { const known = (a.done || []).find(d => d.exercise === id); return known ? named(known) : id.replace(/-/g, " "); };
    return [...by].map(([id, sum]) => sum.sets === 1
      ? say("done.item.one", called(id), sum.contacts) : say("done.item", called(id), sum.sets, sum.contacts));
  };
  const restOf = athlete => {
    const rest = rests.get(athlete);
    if (!rest || stopped(athlete)) return [];
    const next = plan.athletes.find(a => a.id === athlete).items
      .find(i => doneOf(athlete, i.exercise).length < i.sets && !closed(athlete, i.exercise));
    return rest.until <= Date.now() ? [t("rested")]
      : say("rest", clock((rest.until - Date.now()) / 1000), next ? named(next) : t("rest.done"));
  };
  const closedLine = a => el("p", tooMuch(a.id) ? t("closed", worstPain(a.id), stopAbove(a.id))
    : t("closed.bone", placeNamed(a.id, bonePain(a.id))), { class: "asking", "data-closed": a.id });

  const opener = (a, shown) => el("button", t(shown ? "fold" : "log"), {
    type: "button", "aria-expanded": String(shown), "aria-label": t(shown ? "fold.of" : "log.of", a.name), "data-key": "open " + a.id,
    onclick: () => { openAthlete = shown ? null : a.id; draw(); },
  });

  const work = a => {
    const box = el("div", null, { class: "work-now" });
    for (const item of a.items) {
      const part = el("div", null, { class: "item" });
      const done = doneOf(a.id, item.exercise), numbers = new Set(done.map(e => e.data.set));
      const most = Math.max(item.sets, ...numbers);
      part.append(el("h3", item.name, { lang: item.lang || "en" }), el("p", [doseOf(item)], { class: "dose" }));
      const stop = stopOf(a, item);
      if (stop) part.append(el("p", say("stop", stop), { class: "asking" }));
      const sets = el("p", null, { class: "tools" }), open = el("p", null, { class: "tools" }), isClosed = closed(a.id, item.exercise);
      for (let n = 1; n <= most; n++) (isClosed && !numbers.has(n) ? open : sets).append(setButton(a, item, n, numbers.has(n)));
      (isClosed ? open : sets).append(el("button", t("more"), {
        type: "button", "aria-label": t("more.of", a.name, item.name), "data-key": `more ${a.id} ${item.exercise}`,
        onclick: () => logSet(a, item, most + 1),
      }));
      part.append(sets);
      if (isClosed) {
        // What was done before the stop is still counted; nothing more is offered.
        const before = el("details", null, { class: "before-stop" });
        before.append(el("summary", t("before-stop")), open);
        part.append(before);
      }
      part.append(...askReps(a, item));
      for (const e of done) if (e.data.broken_off) part.append(el("p", t("broken-off.said", e.data.set, e.data.reps)));
      if (done.length > 0 && item.stop.landing_faults !== null) {
        const last = done.reduce((x, y) => x.data.set > y.data.set ? x : y);
        const faults = el("p", null, { class: "tools" });
        faults.append(el("span", t("faults.in", last.data.set)));
        for (const n of [0, 1, 2, 3]) {
          faults.append(el("button", n === 3 ? "3+" : String(n), {
            type: "button", "aria-pressed": String(last.data.faults === n), "data-key": `faults ${a.id} ${item.exercise} ${n}`,
            "aria-label": t("faults.of", a.name, item.name, last.data.set, n),
            onclick: () => log("set", a.id, { ...last.data, faults: n }),
          }));
        }
        part.append(faults);
      }
      part.append(pains(a, item.exercise, say("pain.during", named(item)), t("pain.during.aloud", within(item)), workOf(item)));
      if (!isClosed) {
        const own = item.own_stop ? [" ", { en: item.own_stop, lang: item.lang || "en" }] : [];
        part.append(el("p", [...say("stop-when", en(item.stop_when)), ...own], { class: "stop-when" }));
        part.append(el("p", [en(item.rest), ". ", ...say("sore", en(item.if_sore))], { class: "note" }));
      }
      box.append(part);
    }
    // A test that is closed before its first trial is not offered at all.
    for (const test of a.tests || []) if (trialsOf(a.id, test).length || !untested(a, test)) box.append(testing(a, test));
    box.append(pains(a, null, t("pain.rest"), t("pain.rest.aloud")));
    box.append(effort(a));
    return box;
  };

  // A proposed test: trial by trial, what was measured of it if anything was, until it is done or its rule stops it. What is typed
  // stays while the page is drawn anew around it.
  const typed = new Map();
  const testing = (a, test) => {
    const key = `${a.id} ${test.question}`, trials = trialsOf(a.id, test), stop = testStop(a, test);
    const fold = el("details", null, { class: "test", open: trials.length > 0 || typed.has(key) });
    fold.append(el("summary", test.drop_height_m ? say("test.from", named(test), Math.round(100 * test.drop_height_m)) : say("test", named(test))));
    const rules = test.stop.words.flatMap((words, i) => i ? [`; ${t("test.when")} `, en(words)] : en(words));
    fold.append(el("p", say("test.what", en(test.why), trials.length, test.trials)), el("p", say("test.stop", rules), { class: "note" }));
    if (stop) fold.append(el("p", say("stop", stop), { class: "asking" }));
    else if (untested(a, test)) fold.append(el("p", t("test.not-today"), { class: "asking" }));
    else if (trials.length < test.trials) {
      const n = trials.length ? trials[trials.length - 1].data.set + 1 : 1;
      const now = typed.get(key) || { height: "", contact: "", faults: 0 };
      const keep = change => typed.set(key, Object.assign(now, change));
      const field = (word, name, step, most) => {
        const label = el("label", `${word} `);
        label.append(el("input", null, {
          type: "number", inputmode: "decimal", min: "0", max: most, step, value: now[name], "data-key": `${name} ${key}`,
          oninput: e => keep({ [name]: e.target.value }),
        }));
        return label;
      };
      const line = el("p", null, { class: "tools" });
      line.append(field(t("test.field.height"), "height", "0.1", "149"));
      if (test.stop.contact_above_s !== null) line.append(field(t("test.field.contact"), "contact", "1", "4999"));
      if (test.stop.landing_faults !== null) {
        line.append(el("button", t(now.faults ? "test.fault" : "test.no-fault"), {
          type: "button", "aria-pressed": String(now.faults > 0), "data-key": `fault ${key}`,
          onclick: () => { keep({ faults: now.faults ? 0 : 1 }); draw(); },
        }));
      }
      line.append(el("button", t("trial", n), {
        type: "button", "aria-label": t("trial.of", a.name, test.name, n), "data-key": `trial ${key}`,
        onclick: () => {
          const number = (text, over, least, most) => Number(text) / over > least && Number(text) / over < most ? Number(text) / over : null;
          typed.delete(key);
          log("set", a.id, {
            exercise: test.exercise, set: n, reps: 1, contacts: test.contacts_per_trial, faults: now.faults, undone: false,
            drop_height_m: test.drop_height_m, test: test.question, stop: test.stop,
            height_m: number(now.height, 100, 0, 1.5), contact_time_s: number(now.contact, 1000, 0.02, 5),
          });
        },
      }));
      fold.append(line);
    }
    if (trials.length) {
      const last = trials[trials.length - 1];
      fold.append(el("button", t("back", last.data.set), {
        type: "button", "data-key": `back ${key}`, "aria-label": t("back.of", a.name, test.name, last.data.set),
        onclick: () => log("set", a.id, { ...last.data, undone: true }),
      }));
    }
    fold.append(...askReps(a, test, test.question));
    fold.append(pains(a, test.exercise, say("pain.test", named(test)), t("pain.test.aloud", within(test)), workOf(test, test.question)));
    return fold;
  };
  const setButton = (a, item, n, done) => el("button", (done ? "✓ " : "") + t("set", n), {
    type: "button", class: "set", "aria-pressed": String(done), "data-key": `set ${a.id} ${item.exercise} ${n}`,
    "aria-label": t(done ? "set.back" : "set.log", a.name, item.name, n),
    onclick: () => logSet(a, item, n, done),
  });
  const logSet = (a, item, n, done) => {
    if (!done && !closed(a.id, item.exercise)) rests.set(a.id, { until: Date.now() + item.rest_s * 1000 });
    return log("set", a.id, {
      exercise: item.exercise, set: n, reps: item.reps, contacts: item.contacts_per_set, faults: null, undone: Boolean(done),
      drop_height_m: item.drop_height_m,
    });
  };
  // How many reps of the set that was stopped were done: until it is said, the whole set counts as if it had been.
  const askReps = (a, item, test) => {
    const n = brokenOff(a, item, test), whole = test ? 1 : item.reps;
    if (n === null) return [];
    const row = el("p", null, { class: "tools" });
    for (let k = 0; k <= whole; k++) {
      row.append(el("button", String(k), {
        type: "button", "aria-label": t("broken-off.of", a.name, item.name, n, k), "data-key": `reps ${a.id} ${item.exercise} ${test || ""} ${k}`,
        onclick: () => log("set", a.id, {
          exercise: item.exercise, set: n, reps: k, contacts: Math.ceil(workOf(item, test).contacts_per_set * k / whole), faults: null, undone: false,
          drop_height_m: item.drop_height_m ?? null, ...(k < whole ? { broken_off: true } : {}), ...(test ? { test, stop: item.stop } : {}),
        }),
      }));
    }
    return [el("p", t("broken-off", n), { class: "asking" }), row, el("p", t("broken-off.until"), { class: "note" })];
  };
  const pains = (a, exercise, label, aloud, work = null) => {
    const line = el("details");
    line.append(el("summary", label));
    const say = (score, fresh) =>
      log("pain", a.id, { score, when: exercise ? "during" : "rest", exercise, site: null, side: null, site_new: fresh, work });
    const said = painsSaid().filter(e => e.athlete === a.id && e.data.exercise === exercise);
    const fresh = said.some(e => e.data.site_new);
    const row = el("p", null, { class: "tools" });
    for (let n = 0; n <= 10; n++) {
      row.append(el("button", String(n), {
        type: "button", "aria-label": t("pain.of", a.name, aloud, n), "data-key": `pain ${a.id} ${exercise} ${n}`,
        onclick: () => say(n, fresh && n > 0),
      }));
    }
    row.append(el("button", t("place"), {
      type: "button", "aria-pressed": String(fresh), "aria-label": t("place.of", a.name, aloud),
      "data-key": `place ${a.id} ${exercise}`, onclick: () => { if (!fresh) say(null, true); },
    }));
    line.append(row);
    const asked = said.filter(hurts).reduce((x, y) => x ? later(x, y) : y, null);
    if (asked) line.append(...where(a, asked, aloud));
    if (asked && !(sorePlace(asked) || {}).side) line.open = true;
    const worst = worstPain(a.id, exercise);
    if (fresh) line.append(el("p", t("place.logged") + (worst > 0 ? "" : " " + t("place.say"))));
    if (fresh && worst < 1) line.open = true;
    if (worst >= 0) line.append(el("p", t("pain.logged", worst)));
    line.append(...takingBack(a, exercise, said, aloud));
    return line;
  };

  // Where it hurts: where it hurt lately first, then the usual places; the side after the place.
  const where = (a, pain, aloud) => {
    const place = sorePlace(pain), row = el("p", null, { class: "tools" });
    const tell = (site, side) => log("pain-place", a.id, { pain: pain.id, site, side });
    const button = (name, site, side) => row.append(el("button", name, {
      type: "button", "data-key": `where ${pain.id} ${site} ${side}`, "aria-label": t("where.of", a.name, aloud, name),
      "aria-pressed": String(Boolean(place && place.site === site && (side === null || place.side === side))), onclick: () => tell(site, side),
    }));
    for (const s of sore(a.id)) button(s.name, s.site, s.side);
    for (const p of plan.places || []) if (!sore(a.id).some(s => s.site === p.site && !s.side)) button(p.name, p.site, null);
    const parts = [el("p", t("where.ask"), { class: place ? "note" : "asking" }), row];
    if (!place) parts.push(el("p", t("where.unsaid"), { class: "note" }));
    else {
      const sides = el("p", null, { class: "tools" });
      for (const side of ["left", "right", "both"]) {
        sides.append(el("button", sideWord[side], {
          type: "button", "data-key": `side ${pain.id} ${side}`, "aria-label": t("where.of", a.name, aloud, sideWord[side]),
          "aria-pressed": String(place.side === side), onclick: () => tell(place.site, side),
        }));
      }
      parts.push(sides, el("p", t("where.logged", placeNamed(a.id, place))));
      if (lastOf(placesSaid(pain)) && lastOf(placesSaid(pain)).site !== place.site) parts.push(el("p", t("where.bone-stays", placeNamed(a.id, place))));
    }
    return parts;
  };

  // Taking a pain back: who does it says a name, and what was said stays to be seen.
  let backBy = "";
  const scoreOf = e => e.data.score === null ? t("place") : t("pain.score", e.data.score);
  const takingBack = (a, exercise, said, aloud) => {
    const parts = [], back = takenBack();
    for (const e of entries) {
      if (e.kind !== "pain" || e.athlete !== a.id || e.data.exercise !== exercise || !back.has(e.id)) continue;
      parts.push(el("p", t("pain.taken-back", scoreOf(e), back.get(e.id).data.by)));
    }
    const today = said.filter(e => dayOf(e.made_at) === dayOf(new Date().toISOString()));
    if (today.length) {
      const fold = el("details", null, { class: "mistake" }), field = el("label", t("pain.back.by") + " ");
      const name = el("input", null, {
        maxlength: "60", autocomplete: "off", value: backBy, "data-key": `back-by ${a.id} ${exercise}`, oninput: e => { backBy = e.target.value; },
      });
      field.append(name);
      const row = el("p", null, { class: "tools" });
      for (const e of today) {
        row.append(el("button", t("pain.back", scoreOf(e)), {
          type: "button", "data-key": `pain-back ${e.id}`, "aria-label": t("pain.back.of", a.name, aloud, scoreOf(e)),
          onclick: () => {
            if (!backBy.trim()) { name.setAttribute("aria-invalid", "true"); name.focus(); return; }
            log("pain-withdrawn", a.id, { pain: e.id, by: backBy.trim() });
          },
        }));
      }
      fold.append(el("summary", t("pain.mistake")), el("p", t("pain.back.what"), { class: "note" }), field, row);
      parts.push(fold);
    }
    return parts;
  };

  // How hard the session was, said at its end; with its minutes it is the session's load. Whoever was stopped was not in all of it: the
  // minutes up to the stop, as far as this tablet saw the session begin, and a field to say better.
  const minutesTyped = new Map();
  const minutesFor = a => {
    const whole = minutesToday() || plan.minutes;
    if (!stopped(a.id)) return whole;
    if (minutesTyped.has(a.id)) return minutesTyped.get(a.id);
    const at = Math.min(...painsSaid().filter(e => e.athlete === a.id && (e.data.score > plan.stop_above || atBone(e))).map(e => Date.parse(e.made_at)));
    const until = began ? Math.ceil((at - began) / 60000) : 0;
    return until > 0 ? Math.min(whole, until) : whole;
  };
  const effort = a => {
    const line = el("details");
    line.append(el("summary", t("effort")));
    const row = el("p", null, { class: "tools" });
    if (stopped(a.id)) {
      const field = el("label", t("effort.minutes") + " ");
      field.append(el("input", null, {
        type: "number", inputmode: "numeric", min: "1", max: plan.minutes, step: "1", value: minutesFor(a), "data-key": `minutes ${a.id}`,
        onchange: e => minutesTyped.set(a.id, Math.min(plan.minutes, Math.max(1, Math.round(Number(e.target.value)) || plan.minutes))),
      }));
      line.append(el("p", t("effort.stopped"), { class: "note" }), field);
    }
    let last = null;
    for (const e of entries) if (e.kind === "effort" && e.athlete === a.id) last = last ? later(last, e) : e;
    for (let n = 0; n <= 10; n++) {
      row.append(el("button", String(n), {
        type: "button", "aria-pressed": String(Boolean(last) && last.data.rpe === n), "aria-label": t("effort.of", a.name, n),
        "data-key": `effort ${a.id} ${n}`, onclick: () => log("effort", a.id, { rpe: n, minutes: minutesFor(a) }),
      }));
    }
    line.append(row);
    if (last) line.append(el("p", t("effort.logged", last.data.rpe, last.data.minutes)));
    return line;
  };

  let alarmed = "";
  const draw = () => {
    if (!plan) return;
    byId("squad").textContent = plan.squad;
    byId("seen").textContent = plan.seen || "";
    byId("title").textContent = plan.title;
    drawWhere();
    drawRoll();
    const now = alarms();
    if (now.map(plain).join() !== alarmed) {
      if (now.length > alarmed.split("\n").length - 1 && navigator.vibrate) navigator.vibrate(300);
      alarmed = now.map(plain).join();
      byId("alarms").replaceChildren(...now.map(alarm => el("p", alarm, { class: "asking" })));
    }
    document.body.dataset.done = [...setsNow().values()].filter(e => !e.data.undone).length;
    tell();
  };

  const show = async id => {
    const fetched = await fetch("/floor/sessions/" + encodeURIComponent(id)).then(r => r.ok ? r.json() : null).catch(() => null);
    if (fetched) await put("sessions", fetched);
    plan = fetched || await get("sessions", id) || null;
    reachable = Boolean(fetched);
    if (!plan) { tell(); return; }
    entries = (await all("entries")).filter(e => e.session === plan.id);
    const note = await get("notes", "began " + plan.id);
    began = note ? note.value : null;
    await put("notes", { key: "last", value: id });
    draw();
    send();
  };

  const start = async () => {
    if ("serviceWorker" in navigator) navigator.serviceWorker.register("/floor/sw.js").catch(() => {});
    if (navigator.storage && navigator.storage.persist) navigator.storage.persist().catch(() => {});
    const named = await get("notes", "device");
    device = named ? named.value : "Tablet " + (1 + crypto.getRandomValues(new Uint16Array(1))[0] % 99);
    if (!named) await put("notes", { key: "device", value: device });
    byId("device").value = device;
    byId("device").addEventListener("change", () => {
      device = byId("device").value.trim() || device;
      put("notes", { key: "device", value: device });
    });
    const answer = await fetch("/floor/sessions").then(r => r.ok ? r.json() : null).catch(() => null);
    // What this tablet keeps stays open to it, though the program may have no plan yet.
    const listed = answer ? answer.sessions : [];
    const kept = (await all("sessions")).filter(s => !listed.some(l => l.id === s.id)).map(s => ({ id: s.id, title: s.title }));
    sessions = [...listed, ...kept.sort((a, b) => a.id < b.id ? 1 : -1)];
    const last = await get("notes", "last");
    const id = sessions.some(s => s.id === (last && last.value)) ? last.value : (answer && answer.next) || (sessions[0] || {}).id;
    byId("session").replaceChildren(...sessions.map(s => el("option", s.title, { value: s.id, selected: s.id === id })));
    byId("session").addEventListener("change", e => show(e.target.value));
    byId("begin").addEventListener("click", async () => {
      began = Date.now();
      await put("notes", { key: "began " + plan.id, value: began });
      draw();
    });
    byId("minutes").addEventListener("change", async () => {
      if (!plan) return;
      const minutes = Math.min(plan.minutes, Math.max(1, Math.round(Number(byId("minutes").value)) || plan.minutes));
      byId("minutes").value = minutes;
      if (minutes !== (minutesToday() || plan.minutes)) await log("minutes", null, { minutes });
    });
    if (id) await show(id); else tell();
    setInterval(send, 4000);
    window.addEventListener("online", send);
    setInterval(() => {
      if (!plan) return;
      for (const e of document.querySelectorAll("[data-rest]")) {
        const rest = restOf(e.dataset.rest);
        if (e.textContent !== plain(rest)) fill(e, rest);
      }
      if (began && new Date().getSeconds() % 10 === 0) drawWhere();
    }, 1000);
    document.body.dataset.ready = "true";
  };
  start();
})();
