// Works the set-up out as it is typed: asks for the same page and takes over what changed.
"use strict";
(() => {
  const form = document.querySelector("[data-form]");
  if (!form) return;
  let soon = 0, asked = 0;
  const ask = async () => {
    const mine = ++asked, path = "/kit?" + new URLSearchParams(new FormData(form));
    const text = await fetch(path).then(r => r.text()).catch(() => null);
    if (mine !== asked || text === null) return;
    const page = new DOMParser().parseFromString(text, "text/html");
    const now = document.querySelectorAll("[data-live]"), next = page.querySelectorAll("[data-live]");
    now.forEach((place, i) => place.replaceChildren(...next[i].childNodes));
    history.replaceState(null, "", path);
  };
  form.addEventListener("input", () => { clearTimeout(soon); soon = setTimeout(ask, 200); });
})();
