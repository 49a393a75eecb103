// What is folded away stands on a page of its own and is fetched when its fold is opened; without script the fold holds a link there.
"use strict";
(() => {
  const pages = new Map();
  const page = path => {
    if (!pages.has(path)) {
      pages.set(path, fetch(path)
        .then(r => r.ok ? r.text() : Promise.reject(new Error(`${path}: ${r.status}`)))
        .then(text => new DOMParser().parseFromString(text, "text/html")));
    }
    return pages.get(path);
  };
  document.addEventListener("toggle", async event => {
    const fold = event.target;
    if (!fold.open || !fold.dataset.more) return;
    const [path, id] = fold.dataset.more.split("#");
    try {
      const there = (await page(path)).getElementById(id);
      if (!there || !fold.dataset.more) return;
      const here = document.importNode(there, true);
      here.removeAttribute("id");
      delete fold.dataset.more;
      fold.replaceChildren(fold.firstElementChild, here);
    } catch {
      pages.delete(path);
    }
  }, true);
})();
