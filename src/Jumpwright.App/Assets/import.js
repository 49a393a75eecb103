// Hands files to the program one after another, so that one bad file stops no other, then has them taken in together.
"use strict";
(() => {
  const says = document.querySelector("[data-says]"), bar = document.getElementById("bar");
  const notTaken = document.querySelector("[data-not-taken]");
  const words = notTaken.closest("section").dataset; // what is said in the page's language
  const filled = (text, ...gaps) => text.replace(/\{(\d)\}/g, (_, n) => gaps[n]);
  const line = document.querySelector("[data-bar]"); // there only while something is handed in
  let busy = false;
  const over = () => { busy = false; line.hidden = true; };
  const note = (text, lang) => {
    const li = document.createElement("li");
    li.textContent = text;
    if (lang) li.lang = lang;
    notTaken.append(li);
  };
  // A file of a folder goes by its place in it, without the folder's own name: a trials.csv names recordings so.
  const places = new Map();
  const pathOf = file => {
    const path = places.get(file) || file.webkitRelativePath || file.name;
    return path.includes("/") ? path.split("/").slice(1).join("/") : path;
  };
  const hand = async files => {
    if (busy || files.length === 0) return;
    busy = true;
    line.hidden = false;
    says.removeAttribute("lang");
    const intake = crypto.randomUUID();
    let kept = 0;
    notTaken.replaceChildren();
    bar.max = files.length;
    for (let i = 0; i < files.length; i++) {
      bar.value = i;
      says.textContent = filled(words.handing, i + 1, files.length, files[i].name);
      const answer = await fetch(`/import/${intake}/file?name=${encodeURIComponent(pathOf(files[i]))}`, { method: "POST", body: files[i] })
        .catch(() => null);
      const told = answer && await answer.json().catch(() => null);
      if (told && told.kept) kept++;
      else if (told && told.refused) note(told.refused, told.lang);
      else note(filled(words.notHanded, files[i].name));
    }
    bar.value = files.length;
    if (kept === 0) { says.textContent = words.nothing; over(); return; }
    says.textContent = filled(kept === 1 ? words.measuringOne : words.measuring, kept);
    const watch = setInterval(async () => {
      const now = await fetch(`/import/${intake}/state`).then(r => r.json()).catch(() => null);
      if (now && now.total) { bar.max = now.total; bar.value = now.done; says.textContent = filled(words.measured, now.done, now.total); }
    }, 500);
    const answer = await fetch(`/import/${intake}/finish`, { method: "POST" }).catch(() => null);
    clearInterval(watch);
    const told = answer && await answer.json().catch(() => null);
    over();
    if (told && told.taken !== undefined && notTaken.children.length === 0) location.href = `/import?done=${intake}`;
    else if (told && told.taken !== undefined) {
      says.textContent = filled(words.taken, told.taken) + " ";
      const link = document.createElement("a");
      link.href = `/import?done=${intake}`;
      link.textContent = words.see;
      says.append(link);
    } else {
      says.textContent = told && told.refused ? told.refused : words.noAnswer;
      if (told && told.refused) says.lang = told.lang;
    }
  };
  for (const id of ["files", "folder"]) document.getElementById(id).addEventListener("change", e => hand([...e.target.files]));
  const entriesOf = async entry => {
    if (entry.isFile) {
      const file = await new Promise((done, fail) => entry.file(done, fail));
      if (entry.fullPath.lastIndexOf("/") > 0) places.set(file, entry.fullPath.slice(1));
      return [file];
    }
    const reader = entry.createReader(), all = [];
    for (;;) {
      const some = await new Promise((done, fail) => reader.readEntries(done, fail));
      if (some.length === 0) return all;
      for (const e of some) all.push(...await entriesOf(e));
    }
  };
  addEventListener("dragover", e => e.preventDefault());
  addEventListener("drop", async e => {
    e.preventDefault();
    const entries = [...e.dataTransfer.items].map(i => i.webkitGetAsEntry && i.webkitGetAsEntry()).filter(Boolean);
    const files = [];
    for (const entry of entries) files.push(...await entriesOf(entry));
    hand(files.length ? files : [...e.dataTransfer.files]);
  });
})();
